"""No message stands in a file that no page asks for: translators would write it for nobody."""

import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3] / "blockdsl"

PUT_TOGETHER = {
    "sheet-level": "document/block.py joins `level` and `time`",
    "sheet-time": "document/block.py joins `level` and `time`",
    "sheet-level-time": "document/block.py joins `level` and `time`",
    "strips-turn-every": "wording/strips.py joins what there is to say of a turn",
    "strips-square-turn-every": "wording/strips.py joins what there is to say of a turn",
    "then-octagon-off": "wording/strips.py joins the form and what is cut off",
    "then-octagon-oblong-off": "wording/strips.py joins the form and what is cut off",
}
"""Keys that no code has as they are, nor by their beginning, and where they are made."""


def test_every_message_is_asked_for_somewhere() -> None:
    files = [path.read_text("utf-8") for path in (ROOT / "wording" / "en-US").glob("*.ftl")]
    keys = {key for text in files for key in re.findall(r"^([a-z][a-z0-9-]*) =", text, re.MULTILINE)}
    code = "".join(path.read_text("utf-8") for path in ROOT.rglob("*.py"))
    whole = set(re.findall(r"[\"']([a-z][a-z0-9-]*)[\"']", code))
    begun = tuple(set(re.findall(r"f[\"']([a-z0-9-]+)\{", code)))
    inside = set(re.findall(r"\{ ?([a-z][a-z0-9-]*)[ .(}]", "".join(files)))
    unused = {key for key in keys - whole - inside if not key.startswith(begun)}
    assert len(keys) > 1500
    assert unused == set(PUT_TOGETHER)
