"""The documentation as a web site that needs no server: reference, cookbook, tutorial, a page for each problem.

Takes:    the Markdown pages of the language's reference.
Gives:    files of a site; every example is drawn when it is built, and what is wrong with a bad one stands below it.
Measures: points in pictures.
Reports:  nothing.
Does not know: how anything is worked out.
"""
