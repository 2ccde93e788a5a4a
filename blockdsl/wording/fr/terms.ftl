# Les endroits sont des noms : la grammaire en fait « en haut », « du haut », « à gauche », « de gauche ».

place-top = le haut
place-bottom = le bas
place-left = la gauche
place-right = la droite
place-upper-left = le haut à gauche
place-upper-right = le haut à droite
place-lower-left = le bas à gauche
place-lower-right = le bas à droite
