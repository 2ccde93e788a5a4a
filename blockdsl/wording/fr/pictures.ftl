# Les mots des images, et ce que montrent les images pour qui ne peut les voir.

cut-picture = Coupe de { $letter } : { $how }.

drafted-squares = dessiné sur { $across } × { $down } carrés : { $family }
drafted-compass = dessiné sur { $across } × { $down } carrés, au compas : { $family }
drafted-eight-point = dessiné sur une grille à huit branches (√2) : { $family }
drafted-eight-point-parts = dessiné sur une grille à huit branches (√2) de { $across } × { $down } parties : { $family }
drafted-sixty-degrees = dessiné sur une grille à 60° (√3) : { $family }
drafted-sixty-degrees-parts = dessiné sur une grille à 60° (√3) de { $across } × { $down } parties : { $family }
drafted-none = sans grille régulière utile ; ses propres parties sont { $across } × { $down } : { $family }
drafted-listed = { $squares }, classé en { $family }
drafted-uneven = ses carrés ne sont pas tous égaux
drafted-cell = chaque carré { $finished } fini, { $unfinished } non fini
drafted-picture = { $block }, { $squares } ; { $cell }.

border-top = dessus du quilt jusqu’ici
border-picture-sides-first = { $order ->
        [only] Les quatre côtés de la bordure autour du dessus, gauche et droite d’abord.
       *[other] Les quatre côtés de la bordure { $number } autour du dessus, gauche et droite d’abord.
    }
border-picture-ends-first = { $order ->
        [only] Les quatre côtés de la bordure autour du dessus, haut et bas d’abord.
       *[other] Les quatre côtés de la bordure { $number } autour du dessus, haut et bas d’abord.
    }
border-picture-mitered = { $order ->
        [only] Les quatre côtés de la bordure autour du dessus, coins en onglet.
       *[other] Les quatre côtés de la bordure { $number } autour du dessus, coins en onglet.
    }
border-picture-squares-sides-first = { $order ->
        [only] Les quatre côtés de la bordure autour du dessus, avec carrés d’angle, gauche et droite d’abord.
       *[other] Les quatre côtés de la bordure { $number } autour du dessus, avec carrés d’angle, gauche et droite d’abord.
    }
border-picture-squares-ends-first = { $order ->
        [only] Les quatre côtés de la bordure autour du dessus, avec carrés d’angle, haut et bas d’abord.
       *[other] Les quatre côtés de la bordure { $number } autour du dessus, avec carrés d’angle, haut et bas d’abord.
    }
miter-dot = (1) coudre jusqu’au point
miter-fold = (2) plier, coudre sur la ligne
miter-trim = (3) recouper, ouvrir au fer
miter-picture = Un coin en onglet en trois étapes : les deux coutures s’arrêtent à un point dans le coin ; le dessus est plié en diagonale et les bandes cousues ensemble dans le prolongement du pli ; la couture est recoupée et ouverte au fer.

backing-key = tirets : coutures ; pointillé : le quilt
backing-picture = Le dos d’un seul morceau, avec le quilt dessus.
backing-picture-vertical = Le dos de { $widths } laizes, coutures verticales, avec le quilt dessus.
backing-picture-horizontal = Le dos de { $widths } laizes, coutures horizontales, avec le quilt dessus.
layers-picture = Trois épaisseurs, de haut en bas : { $first } ; { $second } ; { $third }.
join-corner = coudre d’un coin à l’autre
join-trim-open = recouper, ouvrir au fer
join-picture = Deux bouts de biais de finition à angle droit, cousus d’un coin à l’autre, puis ouverts au fer.
corner-picture = Un coin du biais de finition en trois étapes : la couture s’arrête avant le bord ; la bande est repliée tout droit vers le haut, avec un pli en diagonale ; elle est rabattue tout droit, alignée au bord, et cousue.
sleeve-back = dos du quilt
sleeve-picture = Le fourreau le long du bord supérieur du dos, un peu plus court que la largeur du quilt.

# Titres des images qui sont des fichiers.
picture-title-colorway = { $name }, { $colorway }
picture-title-letters = { $name }, lettres
picture-title-grid = { $name }, grille
picture-title-cutting = { $name }, coupe
picture-title-rows = { $name }, rangées
picture-title-step = { $name }, étape { $number }
picture-title-squares = { $name }, sur carrés
