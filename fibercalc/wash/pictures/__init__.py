"""Pictures of the wash chapter: functions of plain numbers, each giving one finished picture."""
