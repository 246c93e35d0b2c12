"""What crosses between the page and Python, as types: JSON text in, JSON text out.

site_js/python/protocol.d.ts is written from them at build. Never in the browser's copy, where all
of it is plain dicts; tests/site/test_protocol.py holds that real answers are as declared here.
"""
