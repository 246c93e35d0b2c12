"""Pictures of the weave chapter: functions of plain numbers, each giving one finished picture."""
