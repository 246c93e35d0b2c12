"""Pictures of the sell chapter: functions of plain numbers, each giving one finished picture."""
