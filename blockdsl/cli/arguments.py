"""The commands and their options, and the help that is printed for them."""

from __future__ import annotations

import re
from argparse import (
    SUPPRESS,
    Action,
    ArgumentParser,
    BooleanOptionalAction,
    RawDescriptionHelpFormatter,
    _SubParsersAction,
)
from collections.abc import Iterator
from typing import Final, NoReturn

from blockdsl import __version__
from blockdsl.cli.outputs import ASKED, KINDS
from blockdsl.cli.overrides import MILLIMETRES, add_options, block_width
from blockdsl.cli.problem_printer import COLOURS, MESSAGE_FORMATS
from blockdsl.cli.saying import write_out
from blockdsl.diagnostics import nearest_word
from blockdsl.geometry.fraction import Fraction, read_fraction
from blockdsl.marks.theme import PAPERS, paper_named
from blockdsl.model.language import LANGUAGES
from blockdsl.printing import USUAL_MARGIN_MM

_MOST_JOBS: Final = 256
_LEAST_PORT: Final = 1024
_LAST_PORT: Final = 65535
MOST_MARGIN_MM: Final = 50

COMPARE_FORMATS: Final = ("text", "markdown", "csv", "json")

STAGES: Final = ("tree", "ast", "model", "making", "cuts", "sheet")
"""What `dump` can show: the boundaries between the layers, in order."""

SHELLS: Final = ("bash", "zsh", "tcsh")

_STATUSES: Final = """\
exit status: 0 all is well (warnings included), 1 a file has errors, 2 the command cannot be read,
3 a bug in blockdsl. Problems are printed to standard error. `-` is standard input.
"""

_Commands = _SubParsersAction  # argparse has no public name for it


class _CommandLine(ArgumentParser):
    """Options are written out in full, and a slip is answered with the word that was probably meant."""

    def error(self, message: str) -> NoReturn:
        """Say how the command is written and what is wrong, and end with 2."""
        wrong = re.search(r"invalid choice: '(.*)' \(choose from (.*)\)", message)
        unknown = re.search(r"unrecognized arguments: (--?\w[\w-]*)", message)
        near = None
        if wrong:
            near = nearest_word(wrong[1], re.findall(r"[\w-]+", wrong[2]))
        elif unknown:
            near = nearest_word(unknown[1], self.options_of_all())
        super().error(f"{message}; did you mean {near}?" if near else message)

    def options_of_all(self) -> set[str]:
        """The options of this command; of the whole program those of all commands. Former names are left out."""
        actions = (action for action in self.actions_of_all() if action.help != SUPPRESS)
        return {word for action in actions for word in action.option_strings}

    def actions_of_all(self) -> Iterator[Action]:
        """What may be written in this command; of the whole program in all commands."""
        for action in self._actions:
            yield action
            if isinstance(action, _SubParsersAction):
                for each in action.choices.values():
                    yield from each.actions_of_all()


class _PrintSchema(Action):
    def __call__(self, parser: ArgumentParser, *_: object) -> NoReturn:
        """Print it whatever else is asked for, as `--version` does."""
        from blockdsl.facts.schema import schema_json

        write_out(f"{schema_json()}\n")
        parser.exit()


def parser() -> _CommandLine:
    """The whole command line."""
    whole = _CommandLine(
        allow_abbrev=False,
        prog="blockdsl",
        description="Patchwork blocks written as text: proved, cut, drawn and printed at full size.",
        epilog=_STATUSES,
        formatter_class=RawDescriptionHelpFormatter,
    )
    whole.add_argument("-V", "--version", action="version", version=f"blockdsl {__version__}")
    commands = whole.add_subparsers(dest="command", metavar="COMMAND", required=True)
    _check(commands)
    _preview(commands)
    _build(commands)
    _facts(commands)
    _compare(commands)
    _sizes(commands)
    _grid(commands)
    _gallery(commands)
    _known(commands)
    _format(commands)
    _new(commands)
    _explain(commands)
    _terms(commands)
    _docs(commands)
    _dump(commands)
    _completion(commands)
    _man(commands)
    _language_server(commands)
    return whole


def _command(commands: _Commands[_CommandLine], name: str, words: str, more: str = "") -> _CommandLine:
    return commands.add_parser(
        name,
        allow_abbrev=False,
        help=words,
        description=f"{words[0].upper()}{words[1:]}.{more}",
        epilog=_STATUSES,
        formatter_class=RawDescriptionHelpFormatter,
    )


def _language(command: ArgumentParser) -> None:
    command.add_argument(
        "--language",
        choices=LANGUAGES,
        metavar="LANGUAGE",
        help=f"what the pages are in, whatever the files say: {', '.join(LANGUAGES)} (American English where sizes are "
        "in inches, British where they are in centimetres)",
    )


def _problems(command: ArgumentParser) -> None:
    """How problems are shown, and which warnings count."""
    command.add_argument(
        "--message-format",
        choices=MESSAGE_FORMATS,
        default="text",
        help="problems for people (text), one line each (short), one JSON object a line (json), or one SARIF document "
        "at the end (sarif)",
    )
    _colour(command, "problems")
    command.add_argument(
        "-q", "--quiet", action="store_true", help="tell the problems, and not how many they are or what was written"
    )
    command.add_argument("--warnings-as-errors", action="store_true", help="let every warning count as an error")
    command.add_argument(
        "--deny", type=_warning, action="append", default=[], metavar="CODE", help="let this warning count as an error"
    )
    command.add_argument(
        "--allow", type=_warning, action="append", default=[], metavar="CODE", help="do not tell this warning"
    )


def _colour(command: ArgumentParser, what: str) -> None:
    command.add_argument(
        "--color",
        "--colour",
        choices=COLOURS,
        default="auto",
        help=f"{what} in colour: on a terminal alone (auto), always, or never",
    )


def _warning(text: str) -> str:
    """The code of a warning; argparse turns the ArgumentTypeError into its own message."""
    from blockdsl.cli.settings import wrong_code

    wrong = wrong_code(text)
    if wrong is not None:
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(wrong)
    return text


def _files(command: ArgumentParser) -> None:
    command.add_argument("files", nargs="+", metavar="FILE", help="a block file, or - for standard input")


def _check(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "check",
        "check files for problems",
        "\nNothing is written but with --fix. A fix that is a guess is tried first, and made only where it is the one\n"
        "way, the problem goes away and no other comes.",
    )
    _files(command)
    which = command.add_mutually_exclusive_group()
    which.add_argument("--fix", action="store_true", help="put right what needs no choice, then show what is left")
    which.add_argument("--diff", action="store_true", help="show what --fix would change, and change nothing")
    command.add_argument(
        "--stdin-filename", metavar="FILE", help="read standard input as if it lay there; its `use` lines begin there"
    )
    _problems(command)


def _build(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "build",
        "write the sheet, templates, pictures and cutting table of every block, and every book with its web site",
        "\nFoundation-pieced units, and units over papers, get their papers too. A file without a book gets a site\n"
        "with `--only web`.\n"
        "If a file has errors, nothing is written for it, and its earlier output stays.\n"
        "With --size, --set or --colourway everything is made as you ask, and the sheets say so; the file does not\n"
        "change.",
    )
    _files(command)
    add_options(command)
    command.add_argument("-o", "--output", type=_folder, required=True, metavar="DIR", help="the output folder")
    command.add_argument(
        "--only",
        type=_kinds,
        metavar="KINDS",
        help=f"write these alone, with commas between: {', '.join(KINDS)}; or, written only when they are "
        "asked for, steps, a picture of each step of the sewing, and cut-files, each patch at full size as DXF and SVG "
        "for cutting machines",
    )
    command.add_argument(
        "--paper",
        type=_paper,
        metavar="PAPER",
        help=f"what the PDFs are printed on: {', '.join(PAPERS)}, or a copy shop's roll by its width, such as "
        "'roll 36 in' (the paper that the file's book says, otherwise letter)",
    )
    command.add_argument(
        "--margin",
        type=_margin,
        default=USUAL_MARGIN_MM,
        metavar="LENGTH",
        help="what the printer leaves white round templates on the larger papers, such as '15 mm' or '1/2 in' (12 mm)",
    )
    _language(command)
    command.add_argument(
        "--outline-words",
        action=BooleanOptionalAction,
        default=True,
        help="draw the words of SVG pictures as outlines, since many programs ignore a font in the file (the default); "
        "with --no-outline-words they are words in an embedded font, which can be searched and changed",
    )
    command.add_argument(
        "--all-templates",
        action="store_true",
        help="print a template of every patch, not only of those that a ruler does not cut more simply",
    )
    command.add_argument(
        "--check-print",
        action="store_true",
        help="write check-print.pdf too: print it first, and measure whether the printer prints at actual size",
    )
    command.add_argument(
        "--book", metavar="FILE.pdf", help="gather all blocks in one book too, beside the books that the files declare"
    )
    command.add_argument(
        "--title",
        type=_printed_words,
        metavar="TEXT",
        help="the title of the book (the book's file name)",
    )
    command.add_argument(
        "--depfile", metavar="FILE", help="write rules for make: what was written, and the files it was made from"
    )
    command.add_argument(
        "--watch", action="store_true", help="build again each time one of the files is saved, until Ctrl+C ends it"
    )
    command.add_argument(
        "--jobs", type=_jobs, metavar="N", help="draw with N processes at once (as many as the machine has processors)"
    )
    _cache_options(command)
    _problems(command)


def _cache_options(command: ArgumentParser) -> None:
    command.add_argument(
        "--cache",
        metavar="DIR",
        help="keep what was made in DIR, to be used again (the system's folder for such things, at most 256 MiB)",
    )
    command.add_argument("--no-cache", action="store_true", help="rebuild everything, and save nothing")


def _printed_words(text: str) -> str:
    """Words that are printed; argparse turns the error into its own message."""
    from argparse import ArgumentTypeError

    words = " ".join(text.split())
    if not words:
        raise ArgumentTypeError("it is empty: write the words that are to be printed")
    if not words.isprintable():
        raise ArgumentTypeError("there is a character in it that cannot be printed: type it again")
    return words


def _folder(text: str) -> str:
    """The folder of `-o`; argparse turns the error into its own message."""
    if not text.strip() or text == "-":
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(f"{text!r}: name a folder, such as 'out', or '.' for this one")
    return text


def _jobs(text: str) -> int:
    """The number of `--jobs`; argparse turns the error into its own message."""
    if not (text.isascii() and text.isdigit() and 0 < int(text) <= _MOST_JOBS):
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(f"{text!r}: say how many, from 1 to {_MOST_JOBS}")
    return int(text)


def _paper(text: str) -> str:
    """A paper by its name; argparse turns the ArgumentTypeError into its own message."""
    from argparse import ArgumentTypeError

    try:
        return paper_named(text).name
    except ValueError as fault:
        raise ArgumentTypeError(str(fault)) from None


def _margin(text: str) -> float:
    """A length in millimetres: `15 mm`, `1.5 cm`, `1/2 in`."""
    from argparse import ArgumentTypeError

    number, _, unit = text.strip().rpartition(" ")
    try:
        margin_mm = float(sum(map(read_fraction, number.split()), Fraction(0)) * MILLIMETRES[unit]) if number else -1.0
    except (KeyError, ValueError, ZeroDivisionError):
        margin_mm = -1.0
    if not 0 <= margin_mm <= MOST_MARGIN_MM:
        raise ArgumentTypeError(f"{text!r}: say a length up to {MOST_MARGIN_MM} mm, such as '12 mm' or '1/2 in'")
    return margin_mm


def _kinds(text: str) -> tuple[str, ...]:
    """The words of `--only`; argparse turns the ValueError into its own message."""
    kinds = tuple(word.strip() for word in text.split(",") if word.strip())
    unknown = [kind for kind in kinds if kind not in (*KINDS, *ASKED)]
    if unknown or not kinds:
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(f"{text!r}: say one or more of {', '.join((*KINDS, *ASKED))}, with commas between")
    return kinds


def _facts(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "facts",
        "give the numbers of a file as JSON",
        "\nSeveral files give a list of documents. With --size, --set or --colourway the numbers are for what you\n"
        "ask; the file does not change.",
    )
    _files(command)
    add_options(command)
    command.add_argument(
        "--no-cloth", action="store_true", help="skip the cutting layouts of quilts, which take the longest"
    )
    command.add_argument(
        "--schema", action=_PrintSchema, nargs=0, help="print the JSON schema of such a document, and nothing else"
    )
    _language(command)
    _cache_options(command)
    _problems(command)


def _compare(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "compare",
        "put a file beside itself at other sizes, in other settings and colourways, as one table",
        "\nEvery combination of --size, --set and --colourway is a column, beside the file as it is. There is one\n"
        "table for each quilt and each block; the file does not change.",
    )
    command.add_argument("file", metavar="FILE", help="a block file, or - for standard input")
    add_options(command, several=True)
    command.add_argument(
        "--format",
        choices=COMPARE_FORMATS,
        default="text",
        help="columns to read (text), a table for a page (markdown) or a spreadsheet (csv), or JSON",
    )
    _problems(command)


def _sizes(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "sizes",
        "list every finished size from 3 to 24 in and from 8 to 60 cm",
        "\nFor each: the square of its grid, whether the ruler reads every measure, and the smallest patch. Friendly\n"
        "sizes are marked with a star.",
    )
    _files(command)
    _problems(command)


def _grid(commands: _Commands[_CommandLine]) -> None:
    command = _command(commands, "grid", "show the smallest grid that a block can be drawn on, and its family")
    _files(command)
    command.add_argument(
        "--size",
        type=block_width,
        action="append",
        default=[],
        metavar="LENGTH",
        help="show the square at this finished width too, such as '9 in' or '20 cm'; may be given several times",
    )
    command.add_argument(
        "-o",
        "--output",
        type=_folder,
        metavar="DIR",
        help="draw each block on its squares, as a picture in this folder",
    )
    _problems(command)


def _gallery(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "gallery",
        "show all blocks of the files on one contact sheet, by family; or all that one block can become",
        "\nIt is written as a PDF, an SVG, and a web page with a description of each picture.",
    )
    _files(command)
    command.add_argument("-o", "--output", type=_folder, metavar="DIR", help="the folder for what is written")
    command.add_argument("--title", type=_printed_words, metavar="TEXT", help="its title (Gallery)")
    command.add_argument(
        "--of",
        metavar="BLOCK",
        help="show this block in each setting that suits it, with the size of the quilt and the fabric to buy",
    )
    command.add_argument(
        "--declare",
        type=_number_of_quilt,
        nargs="+",
        default=[],
        metavar="NUMBER",
        help="with --of: write the lines that declare the quilts of these numbers, and nothing else",
    )
    command.add_argument("--paper", type=_paper, metavar="PAPER", help="what the PDF is printed on (letter)")
    _language(command)
    _problems(command)


def _number_of_quilt(text: str) -> int:
    """A number of `--declare`; argparse turns the error into its own message."""
    if not (text.isascii() and text.isdigit() and int(text)):
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(f"{text!r}: give the numbers of quilts on the page, such as 2 5")
    return int(text)


def _known(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "known",
        "say whether a block, or one of its units, is a traditional one or one of yours",
        "\nColours, turn, mirror image and size do not matter; seams do. It is looked up in the library, in the\n"
        "folder of its file and in those below.",
    )
    _files(command)
    command.add_argument(
        "--folder", action="append", default=[], metavar="DIR", help="look here too; may be given several times"
    )
    command.add_argument("--format", choices=("text", "json"), default="text", help="lines to read, or JSON")
    _problems(command)


def _preview(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "preview",
        "show in the browser what a file declares, drawn anew each time it is saved",
        "\nOnly this machine can see it, at a random address. While the file has errors the last good\n"
        "drawing stays, and the errors stand beside it.",
    )
    command.add_argument("file", metavar="FILE", help="a block file")
    command.add_argument("--port", type=_port, default=0, metavar="N", help="the port to serve it at (any free one)")
    command.add_argument("--no-browser", action="store_true", help="print the address, and open no browser")


def _port(text: str) -> int:
    """The number of `--port`; argparse turns the error into its own message."""
    if not (text.isascii() and text.isdigit() and _LEAST_PORT <= int(text) <= _LAST_PORT):
        from argparse import ArgumentTypeError

        raise ArgumentTypeError(f"{text!r}: say a number from {_LEAST_PORT} to {_LAST_PORT}")
    return int(text)


def _format(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "format",
        "lay files out neatly, words and comments kept",
        "\nA file that cannot be read is left as it is. Standard input is formatted to standard output.",
    )
    _files(command)
    command.add_argument(
        "--check", action="store_true", help="change nothing; list the files that would change, and exit with 1"
    )
    _problems(command)


def _new(commands: _Commands[_CommandLine]) -> None:
    command = _command(commands, "new", "start a folder with a few blocks and a makefile")
    command.add_argument("folder", metavar="DIR", help="a folder that does not exist yet, or is empty")


def _language_server(commands: _Commands[_CommandLine]) -> None:
    _command(
        commands,
        "language-server",
        "answer an editor: problems as you type, pictures, completion, names followed across files",
        "\nIt speaks the Language Server Protocol over standard input and output; the editor starts it.",
    ).add_argument("--stdio", action="store_true", help="the usual way, which some editors ask for by name")


def _dump(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands, "dump", "show what blockdsl makes of a file, step by step, to find where it goes wrong"
    )
    command.add_argument("stage", choices=STAGES, metavar="STAGE", help=f"how far to go: {', '.join(STAGES)}")
    command.add_argument("file", metavar="FILE", help="a block file, or - for standard input")
    _problems(command)


def _explain(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "explain",
        "say what a problem means and how to fix it",
        "\nWithout a code it lists all of them. A problem's code stands in brackets: `error[unit-does-not-fit]`.",
    )
    command.add_argument("codes", nargs="*", metavar="CODE", help="the code of a problem")
    _colour(command, "the page")


def _docs(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "docs",
        "open the documentation in the browser, every example drawn",
        "\nTutorial, cookbook, reference and a page for each problem; it needs no network.",
    )
    command.add_argument("-o", "--output", type=_folder, metavar="DIR", help="write the site into this folder instead")
    command.add_argument("--no-browser", action="store_true", help="print where it is, and open no browser")


def _terms(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands, "terms", "explain the words of the trade", "\nWithout a word it explains all that pages use."
    )
    command.add_argument("words", nargs="*", metavar="WORD", help="a word of the trade, such as 'bias' or 'strip set'")
    command.add_argument(
        "--language",
        choices=LANGUAGES,
        default=LANGUAGES[0],
        metavar="LANGUAGE",
        help=f"explain in this language: {', '.join(LANGUAGES)}",
    )


def _completion(commands: _Commands[_CommandLine]) -> None:
    command = _command(
        commands,
        "completion",
        "print a script with which a shell completes commands, options and files",
        "\nFor bash: blockdsl completion bash > ~/.local/share/bash-completion/completions/blockdsl\n"
        "For zsh put it as `_blockdsl` into a folder of `fpath`.",
    )
    command.add_argument("shell", choices=SHELLS, metavar="SHELL", help=f"{', '.join(SHELLS)}")


def _man(commands: _Commands[_CommandLine]) -> None:
    _command(
        commands,
        "man",
        "print the manual page",
        "\nTo keep it: blockdsl man > ~/.local/share/man/man1/blockdsl.1",
    )
