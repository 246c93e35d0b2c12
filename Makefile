# The bench book's commands. Everything is set up on first use; a second run sets up only what changed.
#
#   make serve   build the site and open it on this machine
#   make test    build, type check, and the tests of every day
#   make sweep   the wide run that make test leaves out: every card in every state, size and scheme, more examples
#   make mutate  small faults put into the code one at a time: how many do the native tests notice? (python -m tests.mutate --help)
#   make answers accept what cards now answer and ask: read the change of shared/answers before you keep it
#   make wheel   the package for others, into .build/dist
#   make bench   times and sizes, as ratios; some of them: make bench BENCH="edits dye-recipe yarn-needed" (see tests/bench/run.py)
#   make site | setup | clean

SHELL := /bin/bash
PYTHON ?= python3
# Where the site will stand, for the addresses that must be whole (sitemap, canonical links).
export SITE_URL ?= http://127.0.0.1:8000/
export NO_MKDOCS_2_WARNING := 1
# How many test processes share the work. A process that is done takes half of what another has left.
JOBS ?= 2
PYTEST = $(PY) -m pytest -n $(JOBS) --dist worksteal

PY := .build/venv/bin/python
SOURCES := $(shell find fibercalc docs site_js shared mkdocs.yml pyproject.toml \( -name node_modules -o -name __pycache__ -o -name '*.test.mjs' \) -prune -o -print)

.PHONY: serve test sweep mutate answers wheel bench site setup clean always
.DELETE_ON_ERROR:

serve: site
	@$(PY) -m fibercalc.site.serve

test: site
	$(PY) -m ruff format --check --quiet fibercalc tests docs
	$(PY) -m ruff check --quiet fibercalc tests docs
	$(PY) -m mypy
	@$(MAKE) --no-print-directory .script-tests
	$(PYTEST) -m "not sweep"

sweep: site
	$(PYTEST) -m sweep

mutate: site
	$(PY) -m tests.mutate

answers: .build/python.stamp
	$(PY) -m tests.answers
	$(PY) -m tests.functions

wheel: .build/python.stamp
	$(PY) -m hatchling build --target wheel --directory .build/dist

bench: site
	$(PY) tests/bench/run.py $(BENCH)

site: .build/site.stamp

setup: .build/debian.stamp .build/python.stamp .build/node.stamp

clean:
	rm -rf .build site_js/node_modules

.PHONY: .script-tests
.script-tests:
	npm --prefix site_js run --silent check
	node --test site_js/*/*.test.mjs

.build/site.stamp: .build/python.stamp .build/node.stamp .build/debian.stamp .build/site-url $(SOURCES)
	$(PY) -m fibercalc.site.build
	@touch $@

# Another SITE_URL is another site.
.build/site-url: always
	@mkdir -p .build; cmp -s $@ <<< "$(SITE_URL)" || echo "$(SITE_URL)" > $@

.build/python.stamp: pyproject.toml | .build/debian.stamp
	[ -x $(PY) ] || $(PYTHON) -m venv .build/venv
	$(PY) -m pip install --quiet --disable-pip-version-check --editable '.[site,test]'
	@touch $@

.build/node.stamp: site_js/package.json site_js/package-lock.json
	npm --prefix site_js ci --no-audit --no-fund --loglevel=error
	@touch $@

# Browsers, PDF tools and a reader of printed codes for the tests, and what Debian splits off from Python: from Debian, each only when it is missing.
.build/debian.stamp: Makefile
	@mkdir -p .build
	@packages=(); \
	$(PYTHON) -c 'import ensurepip, venv' 2>/dev/null || packages+=(python3-venv); \
	command -v chromium >/dev/null || packages+=(chromium); \
	command -v firefox-esr >/dev/null || command -v firefox >/dev/null || packages+=(firefox-esr); \
	command -v pdftoppm >/dev/null || packages+=(poppler-utils); \
	command -v zbarimg >/dev/null || packages+=(zbar-tools); \
	if (($${#packages[@]})); then \
	  if [ "$$(id -u)" = 0 ]; then as=(); elif command -v sudo >/dev/null; then as=(sudo); \
	  else echo "Missing: $${packages[*]}. Install them as root: apt-get install $${packages[*]}" >&2; exit 1; fi; \
	  "$${as[@]}" apt-get update -qq && "$${as[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$${packages[@]}" >/dev/null; \
	fi
	@touch $@
