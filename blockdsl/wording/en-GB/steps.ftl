# Sentences of the steps that join patches and units, where British English differs.
