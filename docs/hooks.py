"""MkDocs' side of the build: each event goes straight to the package, which holds the reasons."""

from markdown.util import BLOCK_LEVEL_ELEMENTS

from fibercalc.site import build

# Our elements are blocks. Markdown would put one that it does not know into a paragraph, which ends
# at the first block inside.
BLOCK_LEVEL_ELEMENTS += ["bench-card", "bench-mine", "bench-link", "bench-workbook"]


def on_config(config):
    return build.prepare(config)


def on_post_build(config):
    build.finish(config)
