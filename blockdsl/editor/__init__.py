"""What an editor asks about block files, answered over the Language Server Protocol.

Takes:    requests and the texts of open files, saved or not.
Gives:    problems with their fixes, pictures and sizes, completion, definitions, renaming, hints, formatting.
Measures: code points as everywhere; UTF-16 columns from 0 in `columns` alone.
Reports:  what the other layers report.
Does not know: how anything is worked out.
"""
