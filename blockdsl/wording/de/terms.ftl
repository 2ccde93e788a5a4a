# Places, as adverbs: "links annähen", "Nebel oben links".

place-top = oben
place-bottom = unten
place-left = links
place-right = rechts
place-upper-left = oben links
place-upper-right = oben rechts
place-lower-left = unten links
place-lower-right = unten rechts
