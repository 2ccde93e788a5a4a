"""blockdsl: patchwork blocks as text, proved, cut, drawn and printed at full size."""

__version__ = "0.1.0"
