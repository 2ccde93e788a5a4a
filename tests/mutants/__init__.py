"""Changes of one operator or constant, put in by lot: do the tests notice?"""
