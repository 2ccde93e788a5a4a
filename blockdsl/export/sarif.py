"""Problems as SARIF 2.1.0, the form in which checkers of all kinds tell what they found to other programs.

Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, sections 3.13 (sarifLog), 3.14 (run),
        3.27 (result), 3.30 (region), 3.55 (fix), 3.56 (artifactChange), 3.57 (replacement); names and rules from
        memory of the standard.
"""

from __future__ import annotations

import json
from pathlib import PurePath
from urllib.parse import quote

from blockdsl.diagnostics import CATALOGUE, Diagnostic, Problems, Span
from blockdsl.diagnostics.problems import Edit


def to_sarif(problems: Problems, version: str) -> str:
    """All problems as one document, with its last line ended; `version` is that of blockdsl.

    Units:  lines and columns are code points from 1; the end is the place after the last letter.
    """
    found = list(problems)
    codes = sorted({problem.code for problem in found})
    rules = [
        {
            "id": code,
            "shortDescription": {"text": CATALOGUE[code].meaning},
            "defaultConfiguration": {"level": CATALOGUE[code].severity},
        }
        for code in codes
    ]
    document = {
        "$schema": "https://json.schemastore.org/sarif-2.1.0.json",
        "version": "2.1.0",
        "runs": [
            {
                "tool": {"driver": {"name": "blockdsl", "version": version, "rules": rules}},
                "columnKind": "unicodeCodePoints",
                "results": [_result(problem, codes) for problem in found],
            }
        ],
    }
    return f"{json.dumps(document, indent=2)}\n"


def _result(problem: Diagnostic, codes: list[str]) -> dict[str, object]:
    said = problem.message if problem.help is None else f"{problem.message}\n{problem.help}"
    result: dict[str, object] = {
        "ruleId": problem.code,
        "ruleIndex": codes.index(problem.code),
        "level": problem.severity,
        "message": {"text": said},
        "locations": [{"physicalLocation": _place(problem.span)}],
    }
    if problem.related:
        result["relatedLocations"] = [
            {"id": number, "message": {"text": words}, "physicalLocation": _place(span)}
            for number, (span, words) in enumerate(problem.related, start=1)
        ]
    if sure := [fix for fix in problem.fixes if fix.sure]:  # the others are guesses, to be tried first
        result["fixes"] = [
            {"description": {"text": fix.title}, "artifactChanges": list(map(_change, fix.edits))} for fix in sure
        ]
    return result


def _change(edit: Edit) -> dict[str, object]:
    place = _place(edit.span)
    replacement = {"deletedRegion": place["region"], "insertedContent": {"text": edit.text}}
    return {"artifactLocation": place["artifactLocation"], "replacements": [replacement]}


def _place(span: Span) -> dict[str, object]:
    end_line, end_column = span.source.position(span.stop)
    path = PurePath(span.source.name)
    uri = path.as_uri() if path.is_absolute() else quote(path.as_posix())
    region = {"startLine": span.line, "startColumn": span.column, "endLine": end_line, "endColumn": end_column}
    return {"artifactLocation": {"uri": uri}, "region": region}
