"""What an editor asks about block files, answered over the Language Server Protocol.

Takes:    requests and the texts of open files, saved or not.
Gives:    problems with their fixes, pictures and sizes, completion, definitions, renaming, hints, formatting.
Measures: code points as everywhere; UTF-16 columns from 0 in `columns` alone.
Reports:  what the other layers report.
Does not know: how anything is worked out.

A tour: `server` speaks with the editor, `answers` says what is found in the protocol's own types and `columns` where.
`project` has the open files and reads them; `edited` is a text whose lines keep their offsets, `remembered` what
unchanged blocks came to. `nodes` and `mentions` say what stands at a place and which names are said where; `naming`
follows and changes them. `completing`, `signatures`, `hovering` with `pictures`, `outline`, `tokens`, `hints` and
`layout` each answer one kind of question; `previewing` opens the preview.
"""
