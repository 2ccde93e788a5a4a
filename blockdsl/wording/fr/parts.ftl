# Ce que donnent les étapes d’un bloc : des noms, et ce qui distingue ceux qui se ressemblent.
#
# L’article vient des attributs de `the` : masculin, féminin. La grammaire fait les élisions et les contractions.

the = { $name }
    .m = { $count ->
        [one] { $article ->
        [a] un{ " " }
        [one] un{ " " }
        [the] le{ " " }
        [other] l’autre{ " " }
        [another] un autre{ " " }
       *[none] { "" }
    }
       *[other] { $article ->
        [the] les{ " " }
        [other] les autres{ " " }
        [another] d’autres{ " " }
       *[none] { "" }
    }
    }
    .f = { $count ->
        [one] { $article ->
        [a] une{ " " }
        [one] une{ " " }
        [the] la{ " " }
        [other] l’autre{ " " }
        [another] une autre{ " " }
       *[none] { "" }
    }
       *[other] { $article ->
        [the] les{ " " }
        [other] les autres{ " " }
        [another] d’autres{ " " }
       *[none] { "" }
    }
    }
one = 1 { $name }
other = l’autre { $name }
another = un autre { $name }

# Une pièce à laquelle la créatrice a donné un nom ; $name est le sien.
part-own = { $count ->
        [one] { $article ->
        [a] { the.f }unité « { $name } »
        [one] { the.f }unité « { $name } »
        [the] { the.f }unité « { $name } »
        [other] { the.f }unité « { $name } »
        [another] { the.f }unité « { $name } »
       *[none] { $case ->
            [counted] unité « { $name } »
           *[other] { $name }
        }
    }
       *[other] { the.f }unités « { $name } »
    }
part-own-kind = { $name } ({ $kind })

part-unit = { the.f }{ $number ->
        [none] { $count ->
        [one] unité
       *[other] unités
    }
       *[other] { $count ->
        [one] unité { $number }
       *[other] unités { $number }
    }
    }
part-section = { the.f }{ $number ->
        [none] { $count ->
        [one] section
       *[other] sections
    }
       *[other] { $count ->
        [one] section { $number }
       *[other] sections { $number }
    }
    }
part-block = { the.m }{ $count ->
        [one] bloc
       *[other] blocs
    }
part-segment = { the.m }{ $count ->
        [one] segment
       *[other] segments
    }
part-strip = { the.f }{ $count ->
        [one] bande
       *[other] bandes
    }
part-pair = { the.f }{ $count ->
        [one] paire
       *[other] paires
    }
part-quarter = { the.m }{ $count ->
        [one] quart
       *[other] quarts
    }
part-corner = { the.m }{ $count ->
        [one] coin
       *[other] coins
    }
part-side = { the.m }{ $count ->
        [one] côté
       *[other] côtés
    }
part-middle = { the.m }{ $count ->
        [one] milieu
       *[other] milieux
    }
part-square = { the.m }{ $count ->
        [one] carré
       *[other] carrés
    }
part-four-patch = { the.m }{ $count ->
        [one] bloc de quatre carrés
       *[other] blocs de quatre carrés
    }
part-nine-patch = { the.m }{ $count ->
        [one] bloc de neuf carrés
       *[other] blocs de neuf carrés
    }
part-sixteen-patch = { the.m }{ $count ->
        [one] bloc de seize carrés
       *[other] blocs de seize carrés
    }
part-pieced-square = { the.m }{ $count ->
        [one] carré assemblé
       *[other] carrés assemblés
    }
part-triangle-pair = { the.f }{ $count ->
        [one] paire de triangles
       *[other] paires de triangles
    }
part-corner-triangle = { the.m }{ $count ->
        [one] triangle de coin
       *[other] triangles de coin
    }
part-large-diamond = { the.m }{ $count ->
        [one] grand losange
       *[other] grands losanges
    }
part-half-square-triangle = { the.m }{ $count ->
        [one] demi-carré en triangle
       *[other] demi-carrés en triangle
    }
part-quarter-square-unit = { the.f }{ $count ->
        [one] unité en quarts de carré
       *[other] unités en quarts de carré
    }
part-hourglass = { the.m }{ $count ->
        [one] sablier
       *[other] sabliers
    }
part-split-square = { the.m }{ $count ->
        [one] carré à trois triangles
       *[other] carrés à trois triangles
    }
part-snowball = { the.f }{ $count ->
        [one] boule de neige
       *[other] boules de neige
    }
part-rail-unit = { the.f }{ $count ->
        [one] unité de bandes
       *[other] unités de bandes
    }
part-bar-unit = { the.f }{ $count ->
        [one] unité de barres
       *[other] unités de barres
    }
part-checkerboard = { the.m }{ $count ->
        [one] damier
       *[other] damiers
    }
part-eight-point-star = { the.f }{ $count ->
        [one] étoile à huit branches
       *[other] étoiles à huit branches
    }
part-hexagon-field = { the.m }{ $count ->
        [one] champ d’hexagones
       *[other] champs d’hexagones
    }
part-half-rectangle-triangle = { the.m }{ $count ->
        [one] demi-rectangle en triangle
       *[other] demi-rectangles en triangle
    }
part-triangle-in-a-square = { the.m }{ $count ->
        [one] triangle dans un carré
       *[other] triangles dans un carré
    }
part-trapezoid-unit = { the.f }{ $count ->
        [one] unité en trapèzes
       *[other] unités en trapèzes
    }
part-slanting-strip = { the.f }{ $count ->
        [one] bande oblique
       *[other] bandes obliques
    }
part-spool = { the.f }{ $count ->
        [one] bobine
       *[other] bobines
    }
part-octagon = { the.m }{ $count ->
        [one] octogone
       *[other] octogones
    }
part-log-cabin = { the.m }{ $count ->
        [one] log cabin
       *[other] log cabins
    }
part-pineapple = { the.m }{ $count ->
        [one] ananas
       *[other] ananas
    }
part-quarter-circle-unit = { the.f }{ $count ->
        [one] unité en quart de cercle
       *[other] unités en quart de cercle
    }
part-fan = { the.m }{ $count ->
        [one] éventail
       *[other] éventails
    }
part-half = { the.f }{ $count ->
        [one] moitié
       *[other] moitiés
    }
part-goose = { the.m }{ $count ->
        [one] vol d’oies
       *[other] vols d’oies
    }
part-plain-patch = { the.f }{ $count ->
        [one] pièce unie
       *[other] pièces unies
    }
part-flying-geese = { the.m }{ $count ->
        [one] vol d’oies
       *[other] vols d’oies
    }
part-courthouse-steps = { the.m }{ $count ->
        [one] escalier du palais
       *[other] escaliers du palais
    }
part-diamond-in-a-rectangle = { the.m }{ $count ->
        [one] losange dans un rectangle
       *[other] losanges dans un rectangle
    }
part-kite-in-a-square = { the.m }{ $count ->
        [one] cerf-volant dans un carré
       *[other] cerfs-volants dans un carré
    }
part-square-in-a-square = { the.m }{ $count ->
        [one] carré dans un carré
       *[other] carrés dans un carré
    }
part-row-of-tumblers = { the.f }{ $count ->
        [one] rangée de gobelets
       *[other] rangées de gobelets
    }
part-block-with-its-applique = { the.m }{ $count ->
        [one] bloc avec son appliqué
       *[other] blocs avec leur appliqué
    }
part-sixty-degree-triangles = { the.m }{ $count ->
        [one] champ de triangles à 60°
       *[other] champs de triangles à 60°
    }
part-cubes-of-sixty-degree-diamonds = { the.m }{ $count ->
        [one] champ de cubes en losanges à 60°
       *[other] champs de cubes en losanges à 60°
    }
part-segment-of-set = { the.m }{ $count ->
        [one] segment de l’ensemble { $number }
       *[other] segments de l’ensemble { $number }
    }
part-row = rangée { $number }
part-column = colonne { $number }
part-rows = rangées { $numbers }
part-columns = colonnes { $numbers }
part-round = tour { $number }
part-straight-round = tour droit { $number }
part-diagonal-round = tour en diagonale { $number }
part-numbers-to = { $first } à { $last }

part-in-fabric = { $name } en { $fabric }
part-of-fabrics = { $name } en { $fabrics }
part-reversed = { $name } en miroir
part-ordinal = { $name } nº { $number }
part-again = { $name }, nº { $number }
part-made-patch-by-patch = { $name } à assembler pièce par pièce
part-made-over-papers = { $name } sur gabarits de papier
part-made-on-papers = { $name } en couture sur papier
part-made-by-stitch-and-flip = { $name } à coins rabattus
part-made-from-a-strip-set = { $name } à partir d’un ensemble de bandes
part-made-two-at-a-time = { $name }, méthode à deux
part-made-four-at-a-time = { $name }, méthode à quatre
part-made-eight-at-a-time = { $name }, méthode à huit

patch-in-fabric = { $letter } ({ $fabric })
# « counted » est le cas après un nombre : 1 unité « Poutre ».
take-units = { $count } { NAME($name, case: "counted") }
take-patches = { $form ->
        [triangle] { $count ->
        [one] { $count } triangle { $letter } ({ $fabric })
       *[other] { $count } triangles { $letter } ({ $fabric })
    }
        [square] { $count ->
        [one] { $count } carré { $letter } ({ $fabric })
       *[other] { $count } carrés { $letter } ({ $fabric })
    }
       *[plain] { $count } { $letter } ({ $fabric })
    }
joined-row = la { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
       *[5] cinquième
    } rangée
joined-column = la { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
       *[5] cinquième
    } colonne
joined-pair = la { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
       *[5] cinquième
    } paire
joined-part = la { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
       *[5] cinquième
    } partie
joined-one = la { $number ->
        [1] première
        [2] deuxième
        [3] troisième
        [4] quatrième
       *[5] cinquième
    } pièce
take-from-step = { $name } (étape { $step })
take-pieces = { $count } { $piece } en { $fabric } de { $size } { $unit ->
        [in] po
       *[other] { $unit }
    }
take-strips = { $count } { $piece } en { $fabric } de { $size } { $unit ->
        [in] po
       *[other] { $unit }
    } de large

piece-square = { the.m }{ $count ->
        [one] carré
       *[other] carrés
    }
piece-rectangle = { the.m }{ $count ->
        [one] rectangle
       *[other] rectangles
    }
piece-strip = { the.f }{ $count ->
        [one] bande
       *[other] bandes
    }
piece-triangle = { the.m }{ $count ->
        [one] triangle
       *[other] triangles
    }
piece-diamond = { the.m }{ $count ->
        [one] losange
       *[other] losanges
    }
piece-parallelogram = { the.m }{ $count ->
        [one] parallélogramme
       *[other] parallélogrammes
    }
piece-trapezoid = { the.m }{ $count ->
        [one] trapèze
       *[other] trapèzes
    }
piece-hexagon = { the.m }{ $count ->
        [one] hexagone
       *[other] hexagones
    }
piece-octagon = { the.m }{ $count ->
        [one] octogone
       *[other] octogones
    }
piece-template = { the.f }{ $count ->
        [one] pièce
       *[other] pièces
    }
