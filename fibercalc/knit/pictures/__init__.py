"""Pictures of the knit chapter: functions of plain numbers, each giving one finished picture."""
