# Two commands do everything on a fresh machine:
#   make book    the demo pattern book, into out/
#   make test    the checks and every test
#   make gallery all library blocks on one contact sheet, into out/

BIN := .venv/bin
BOOK := library/demo/book.block

.DEFAULT_GOAL := help
.PHONY: help book gallery test check fuzz trial sewn read mutants bench readme format clean libraries judges web-judges
.DELETE_ON_ERROR:

help:
	@echo "make book     build the demo pattern book into out/"
	@echo "make test     make check, then every test"
	@echo "make gallery  show all library blocks on one contact sheet in out/: PDF, SVG and a web page"
	@echo "make check    lint, layout, types and the order of the layers"
	@echo "make format   lay the Python files out anew, and the parsers' tables when a grammar or keyword has changed"
	@echo "make fuzz     twenty thousand spoiled files, outside the tests (some minutes)"
	@echo "make trial    a maker's folder in rough hands: builds killed, at once, full disks, odd names (some minutes)"
	@echo "make sewn     sew the library at four sizes and 300 blocks by lot, work out 60 quilts (a run of the tests takes fewer)"
	@echo "make read     read the steps of the library and try 500 faults of wording in them (a run of the tests tries 60)"
	@echo "make mutants  a hundred changes of one operator or constant: do the tests notice? (an hour or two)"
	@echo "make bench    time the commands, and a book beside Typst; judge plans for cloth; count the words of steps; measure pages"
	@echo "make readme   draw the picture of the README anew; look at it before you keep it"
	@echo "make help     this list"
	@echo "make clean    remove what was built, and .venv"

book: .venv/.installed
	@$(BIN)/blockdsl build $(BOOK) -o out

gallery: .venv/.installed
	@$(BIN)/blockdsl gallery library/*.block -o out --title "Gallery of traditional blocks"

test: check libraries judges web-judges
	@$(BIN)/pytest --quiet --numprocesses auto --dist worksteal

check: .venv/.installed
	@$(BIN)/ruff check --quiet
	@$(BIN)/ruff format --check --quiet || { echo "some files are laid out differently: make format"; exit 1; }
	@$(BIN)/mypy --no-error-summary
	@$(BIN)/lint-imports > .venv/imports.txt 2>&1 || { cat .venv/imports.txt; exit 1; }
	@echo "lint, layout, types and imports hold"

format: .venv/.installed
	@$(BIN)/ruff format --quiet
	@$(BIN)/python -m tests.grammars.make_tables
	@$(BIN)/python -m tests.grammars.make_textmate

fuzz: .venv/.installed libraries
	@$(BIN)/python -m tests.fuzz.run
	@$(BIN)/python -m tests.fuzz.messages

trial: .venv/.installed libraries
	@$(BIN)/python -m tests.fuzz.trial

sewn: .venv/.installed
	@BLOCKDSL_EVERY_SIZE=1 $(BIN)/pytest --quiet --numprocesses auto --dist worksteal tests/outside/test_library_sewn.py tests/outside/test_virtual_sewing.py tests/outside/test_careful_maker.py tests/outside/test_calculator.py

read: .venv/.installed
	@$(BIN)/python -m tests.outside.reader
	@$(BIN)/python -m tests.outside.reader.faults

mutants: .venv/.installed libraries
	@$(BIN)/python -m tests.mutants.run

readme: .venv/.installed
	@$(BIN)/python -m tests.snapshots.readme.draw

bench: .venv/.installed libraries
	@$(BIN)/python tests/bench/bench.py
	@$(BIN)/python tests/bench/book.py
	@$(BIN)/python tests/bench/cloth.py
	@$(BIN)/python tests/bench/steps.py
	@$(BIN)/python -m tests.bench.pages
	@$(BIN)/python -m tests.bench.editor

# Made anew when pyproject.toml changes: its scripts, packages and settings all come from there.
.venv/.installed: pyproject.toml
	@.ci/make-venv
	@touch $@

# Asked each time: it takes a twentieth of a second, and a stamp could outlive the library.
libraries: .venv/.installed
	@.ci/system-libraries $(BIN)/python

# The programs that the tests open every PDF with.
judges: .venv/.installed
	@.ci/system-libraries $(BIN)/python judges

# Those that judge the web sites: Node.js, a browser, and what package.json there names.
web-judges:
	@.ci/web-judges

clean:
	@find out -mindepth 1 ! -name README.md -delete
	@rm -rf .venv dist tests/outside/web/node_modules .pytest_cache .mypy_cache .ruff_cache .hypothesis .import_linter_cache
	@find blockdsl tests -name __pycache__ -type d -prune -exec rm -rf {} +
