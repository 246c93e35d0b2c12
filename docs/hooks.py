"""MkDocs' side of the build: each event goes straight to the package, which holds the reasons."""

from fibercalc.site import build


def on_config(config):
    return build.prepare(config)


def on_post_build(config):
    build.finish(config)
