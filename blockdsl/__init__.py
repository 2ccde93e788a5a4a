"""blockdsl: patchwork blocks as text, proved, cut, drawn and printed at full size.

    import blockdsl

    result = blockdsl.load("pinwheel.block")
    print(result.report())
    result.blocks["Pinwheel"].write_pdf("out/pinwheel.pdf")

What is named here is loaded when it is asked for, so that importing the package costs next to nothing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

__version__ = "0.1.0"

__all__ = ["Block", "Book", "Diagnostic", "HasErrors", "Quilt", "Refused", "Result", "__version__", "load"]

if TYPE_CHECKING:
    from blockdsl.diagnostics import Diagnostic
    from blockdsl.export.output_folder import Refused
    from blockdsl.result import Block, Book, HasErrors, Quilt, Result, load
else:

    def __getattr__(name: str) -> object:
        """The public names, from the module that has them all."""
        if name not in __all__:
            raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
        from blockdsl import result

        return getattr(result, name)

    def __dir__() -> list[str]:
        """The public names, which an editor or a notebook offers."""
        return sorted(__all__)
