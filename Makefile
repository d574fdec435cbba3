# What a newcomer types: make demo, make test. What a contributor types too: make lint, fuzz, bench, docs.

VENV := .venv
BIN := $(VENV)/bin
PYTHON ?= python3
DEMO := build/demo
LOT := examples/first-lot.toml
SOURCES := $(shell find src macros/src python/src -name '*.rs' -o -name '*.tsv' -o -name '*.csv') Cargo.toml Cargo.lock macros/Cargo.toml python/Cargo.toml pyproject.toml

.PHONY: demo test test-rust test-python fuzz lint bench docs stubs checks guide clean

# --- setting up --------------------------------------------------------------------------------

$(VENV)/made:
	@command -v cargo >/dev/null || { echo "Rust is missing: install it from https://rustup.rs"; exit 1; }
	@$(PYTHON) -c 'import sys; sys.exit(sys.version_info < (3, 11))' || { echo "Python 3.11 or newer is needed: make PYTHON=/path/to/python3.11"; exit 1; }
	$(PYTHON) -m venv $(VENV) || { echo "The venv module is missing: apt-get install python3-venv"; rm -rf $(VENV); exit 1; }
	$(BIN)/pip install --quiet --disable-pip-version-check 'maturin>=1.8,<2'
	touch $@

# The package, built and installed into the environment, with what a picture needs.
$(VENV)/built: $(VENV)/made $(SOURCES)
	. $(BIN)/activate && maturin develop --release --quiet --extras plot
	touch $@

# What the tests need besides.
$(VENV)/dev: $(VENV)/built pyproject.toml
	. $(BIN)/activate && maturin develop --release --quiet --extras dev
	touch $@

# --- the main job ------------------------------------------------------------------------------

demo: $(VENV)/built
	@mkdir -p $(DEMO)
	@$(BIN)/hankwise plan $(LOT) --picture $(DEMO)/plan.svg --picture $(DEMO)/plan.png --workbook $(DEMO)/plan.xlsx
	@$(BIN)/hankwise plan $(LOT) --json > $(DEMO)/plan.json.part && mv $(DEMO)/plan.json.part $(DEMO)/plan.json
	@echo
	@echo "Written: $(DEMO)/plan.svg and plan.png (the picture), plan.xlsx (the live workbook), plan.json (for programs)"
	@echo "Now try: . $(BIN)/activate && hankwise plan $(LOT) --working twister.twist"

# --- tests -------------------------------------------------------------------------------------

test: test-rust test-python

test-rust:
	@sh .ci/packages
	cargo test --workspace --quiet
	RUSTDOCFLAGS="-D warnings" cargo doc --workspace --no-deps --quiet

test-python: $(VENV)/dev
	@sh .ci/packages
	$(BIN)/python -m pytest

# The randomised tests alone, with cases that nobody has seen: as many a test as CASES says. A failure
# comes again with the SEED that is printed.
CASES ?= 1000
SEED := $(shell od -An -N4 -tu4 /dev/urandom | tr -d ' ')

fuzz: $(VENV)/dev
	@echo "make fuzz CASES=$(CASES) SEED=$(SEED)"
	PROPTEST_CASES=$(CASES) PROPTEST_RNG_SEED=$(SEED) cargo test --workspace --tests --quiet
	FUZZ_CASES=$(CASES) $(BIN)/python -m pytest -m hypothesis --hypothesis-seed=$(SEED)

# --- for contributors --------------------------------------------------------------------------

lint: $(VENV)/dev
	cargo fmt --all --check
	cargo clippy --workspace --all-targets --quiet -- -D warnings
	for features in '' plan-file serde sheet; do \
	  cargo check --package hankwise --no-default-features --features "$$features" --quiet || exit 1; done
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	$(BIN)/mypy

# Ratios against a peer measured in the same run; nothing passes or fails by the clock.
bench: $(VENV)/dev
	cargo bench --quiet
	$(BIN)/python benches/bench.py

docs:
	RUSTDOCFLAGS="-D warnings" cargo doc --no-deps
	@echo "Open target/doc/hankwise/index.html"

# After a formula was added or changed: the Python stubs are made from the catalogue.
stubs: $(VENV)/built
	$(BIN)/python -m hankwise._stubs

# After a row of tests/published was added: descriptions say how many there are.
checks:
	HANKWISE_WRITE=1 cargo test --test published the_numbers_of_checks

# After a key of the lot file was added or changed: docs/lot-file.md has a table of them.
guide:
	HANKWISE_WRITE=1 cargo test --test readme the_keys_in_the_guide

clean:
	rm -rf target build $(VENV)
