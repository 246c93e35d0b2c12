"""Her own records: declared, validated and migrated here in Python; only kept by the browser."""
