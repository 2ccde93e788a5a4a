"""What a file declares, drawn in a browser as it is saved or typed.

Takes:    a file, or its text from an editor, and what is chosen on the page: item, size, setting, colourway, paper.
Gives:    a page on this machine alone: drawings, problems, the sewing seam by seam, downloads.
Measures: points in pictures, code points in lines.
Reports:  what the other layers report, on the page.
Does not know: how anything is worked out.

A tour: `seen` reads the file and keeps the last good reading, `view` says what the page shows of it as plain data,
`frames` is the sewing one seam at a time, `downloads` the files that may be taken away, `guard` who may ask, `app`
answers, `serving` runs it and watches the files. In `static` are the page, its style and its script.
"""
