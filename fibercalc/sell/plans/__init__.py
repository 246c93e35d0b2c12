"""Plans written out: tables and papers from what a card found."""
