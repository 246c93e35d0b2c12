"""Properties in this folder are judged by their claim and not by a clock: a busy machine must not fail one."""

from hypothesis import settings

settings.register_profile("no deadline", deadline=None)
settings.load_profile("no deadline")
