# La fiche du bloc, ses tableaux et ses images, et les mêmes sur les sites et dans les livres.

sheet-finished = Fini
sheet-unfinished = Non fini
sheet-grid = Grille, finie
sheet-made-of = Composition
sheet-level = Niveau
sheet-level-time = Niveau et durée
sheet-time = Durée
# The address is one of the web, as it is printed.
sheet-qr = Code QR de { $address }
sheet-photos = Photos
sheet-see = Sur Internet
sheet-notes = Notes
sheet-source = Source
sheet-applique = Appliqué
sheet-sizes = À propos des mesures
sheet-care = Précautions
sheet-before-cutting = Avant la coupe
sheet-letters = Pièces par lettre
sheet-in-color = En couleur
sheet-steps = Étapes
sheet-continued = { $title }, suite
sheet-family = Famille : { $family }.
sheet-in-colorway = Dans le coloris { $name }
sheet-by-maker = par { $maker }

count-patches = { $count ->
        [one] { $number } pièce
       *[other] { $number } pièces
    }
count-fabrics = { $count ->
        [one] { $number } tissu
       *[other] { $number } tissus
    }
count-pieces = { $count ->
        [one] { $number } morceau
       *[other] { $number } morceaux
    }
count-blocks = { $count ->
        [one] { $number } bloc
       *[other] { $number } blocs
    }
count-patchwork-blocks = { $count ->
        [one] { $number } bloc de patchwork
       *[other] { $number } blocs de patchwork
    }
count-quilts = { $count ->
        [one] { $number } quilt
       *[other] { $number } quilts
    }
count-strips = { $count ->
        [one] { $number } bande
       *[other] { $number } bandes
    }
count-lengths = { $count ->
        [one] { $number } longueur
       *[other] { $number } longueurs
    }
count-borders = { $count ->
        [0] sans bordure
        [one] { $number } bordure
       *[other] { $number } bordures
    }
count-rows = { $count ->
        [one] { $number } rangée
       *[other] { $number } rangées
    }
count-prints = { $count ->
        [one] { $number } imprimé
       *[other] { $number } imprimés
    }
count-fat-quarters = { $count ->
        [one] { $number } fat quarter
       *[other] { $number } fat quarters
    }
count-widths = { $count ->
        [one] { $number } laize
       *[other] { $number } laizes
    }
count-spare = { $number } en trop

value-light = clair
value-medium = moyen
value-dark = foncé

measure-finished = { $size } fini
measure-unfinished = { $size } non fini
measure-millimeters = { $length } mm
grid-squares = { $columns } × { $rows } carrés de { $size }
grid-rectangles = { $columns } × { $rows } rectangles de { $size }
grid-columns-range = { $count } colonnes de { $least } à { $most } { $unit ->
        [in] po
       *[other] { $unit }
    } de large
grid-rows-range = { $count } rangées de { $least } à { $most } { $unit ->
        [in] po
       *[other] { $unit }
    } de haut
grid-columns = { $count ->
        [one] colonne de { $sizes } { $unit ->
        [in] po
       *[other] { $unit }
    }
       *[other] colonnes de { $sizes } { $unit ->
        [in] po
       *[other] { $unit }
    }
    }
grid-rows = { $count ->
        [one] rangée de { $sizes } { $unit ->
        [in] po
       *[other] { $unit }
    }
       *[other] rangées de { $sizes } { $unit ->
        [in] po
       *[other] { $unit }
    }
    }

family-four-patch = quatre carrés
family-five-patch = cinq carrés
family-seven-patch = sept carrés
family-nine-patch = neuf carrés
family-one-patch = pièce unique
family-rounds = tours
family-curved = courbes
family-basket = paniers
family-boat = bateaux
family-cross = croix
family-eight-point = huit branches
family-house = maisons
family-letter = lettres
family-octagon = octogones
family-square = carrés
family-star = étoiles
family-strips = bandes
family-tree = arbres
family-triangle = triangles
family-eight-point-star = étoile à huit branches
family-one-patch-of-hexagons = hexagones seuls
family-one-patch-of-sixty-degree-triangles = triangles à 60° seuls
family-one-patch-of-tumblers = gobelets seuls
family-eight-point-design = dessin à huit branches
family-sixty-degree-design = dessin à 60°
family-other = Autres grilles
family-oblong = grille allongée, { $across } × { $down }
family-uneven = grille inégale, { $across } × { $down } parties
family-grid = grille de { $across } × { $down }

sizes-allowance = Les mesures de coupe comprennent une marge de couture de { $seam } et sont arrondies au { $measure } supérieur. Les tailles finies sont celles du quilt terminé, sans marge de couture.
sizes-between-marks = Certaines tailles finies de ce bloc tombent entre les traits de la règle. Les pièces sont arrondies au trait supérieur, et les unités un peu trop grandes : recouper chacune à la taille indiquée avant l’assemblage.
sizes-metric = La règle métrique courante ajoute { $half } cm pour les demi-carrés et { $quarter } cm pour les quarts de carré en triangle. Avec une couture de { $seam } cm, il manque { $halfshort } mm et { $quartershort } mm ; les carrés sont donc ici un peu plus grands.
sizes-templates = Les pièces marquées « au gabarit » se coupent autour des gabarits grandeur nature ; leurs mesures sont celles du tissu nécessaire.

bias-edges = Bords dans le biais si l’on coupe comme indiqué : { $edges }. Le biais s’étire : manier ces bords avec douceur, et repasser sans faire glisser le fer.
bias-all = tous les bords de { $letters }
bias-long = { $count ->
        [one] le bord long de { $letters }
       *[other] les bords longs de { $letters }
    }
bias-short = { $count ->
        [one] le bord court de { $letters }
       *[other] les bords courts de { $letters }
    }
bias-some = { $count } des { $of } bords de { $letters }
bias-outside = { $count ->
        [one] Le bord extérieur de { $letters } est aussi dans le biais : le stabiliser d’une piqûre dans la marge de couture avant toute manipulation du bloc.
       *[other] Les bords extérieurs de { $letters } sont aussi dans le biais : les stabiliser d’une piqûre dans la marge de couture avant toute manipulation du bloc.
    }

care-cutter = Cutter rotatif : refermer la lame en le posant, et couper en s’éloignant de soi. Tenir enfants et animaux à l’écart.
care-iron = Fer : tenir mains et cordon loin de la semelle, et l’éteindre en quittant la table.
care-needles = Aiguilles et épingles : compter au début et à la fin, et garder les doigts loin de l’aiguille en marche.
care-tools = Suivre le mode d’emploi des outils et des machines, et les règlements locaux.

applique-order = Coudre et repasser d’abord le bloc. Y poser les pièces dans l’ordre de leurs lettres, en commençant par celle du dessous.
applique-turned = { $letters } : couper sur le trait continu du gabarit. Tracer le tireté sur l’endroit du tissu. Cranter la marge dans les creux, rentrer { $width } sur la ligne, épingler, et coudre le pli à petits points cachés. Laisser à plat les bords qu’une autre pièce recouvre.
applique-turned-mixed = { $letters } : couper sur le trait continu du gabarit. Tracer le tireté sur l’endroit du tissu. Cranter la marge dans les creux, rentrer la marge sur la ligne, épingler, et coudre le pli à petits points cachés. Laisser à plat les bords qu’une autre pièce recouvre.
applique-raw = { $letters } : couper sur la ligne ; aucun bord n’est rentré. Fixer chaque pièce au voile thermocollant ou à la colle à tissu, selon le mode d’emploi, dans un lieu aéré et sans contact avec la peau, et coudre le tour au point zigzag serré ou au point de feston.
applique-care = Épingles et aiguilles : compter au début et à la fin. Ciseaux pointus : couper en s’éloignant de la main qui tient le tissu.

cutting = Coupe
cutting-sizes-in = mesures en pouces, marge de couture comprise
cutting-sizes-cm = mesures en centimètres, marge de couture comprise
cutting-to-cut = { $count ->
        [one] { $number } morceau à couper
       *[other] { $number } morceaux à couper
    }
cutting-tick = { $count } { $piece } { $size }, { $fabric }
cutting-caption-in = Morceaux pour { $block } : mesures en pouces, marge de couture comprise
cutting-caption-cm = Morceaux pour { $block } : mesures en centimètres, marge de couture comprise
cutting-caption-at-in = Morceaux pour { $block }, { $finished } fini : mesures en pouces, marge de couture comprise
cutting-caption-at-cm = Morceaux pour { $block }, { $finished } fini : mesures en centimètres, marge de couture comprise
head-done = fait
head-fabric = tissu
head-cut = couper
head-piece = morceau
head-size = taille
head-width = largeur
head-height = hauteur
head-then = puis
head-patch = pièce
head-for = pour
head-spare = en trop
head-in-all = en tout
head-cutter = emporte-pièce
head-in-place-of = au lieu de

cut-by-template = au gabarit

then-corner-once = { $count ->
        [one] couper une fois d’un coin à l’autre → { $number } triangle
       *[other] couper une fois d’un coin à l’autre → { $number } triangles
    }
then-corner-twice = { $count ->
        [one] couper deux fois d’un coin à l’autre → { $number } triangle
       *[other] couper deux fois d’un coin à l’autre → { $number } triangles
    }
then-triangles = { $count ->
        [one] → { $number } triangle
       *[other] → { $number } triangles
    }
then-patches = { $count ->
        [one] → { $number } pièce
       *[other] → { $number } pièces
    }
then-segments = { $count ->
        [one] coudre en un ensemble → { $number } segment
       *[other] coudre en un ensemble → { $number } segments
    }
then-units = { $count ->
        [one] pour { $number } unité
       *[other] pour { $number } unités
    }
then-octagon = couper en carré, puis abattre les quatre coins à 45°
then-octagon-oblong = couper en rectangle, puis abattre les quatre coins à 45°
then-octagon-off = couper en carré, puis abattre les quatre coins à 45°, à { $off } de chaque coin le long des deux bords
then-octagon-oblong-off = couper en rectangle, puis abattre les quatre coins à 45°, à { $off } de chaque coin le long des deux bords
then-areas = { $purpose } { $areas }

strips-one = dans une bande de { $size } { $unit ->
        [in] po
       *[other] { $unit }
    }
strips-several = dans { $strips } bandes de { $width } { $unit ->
        [in] po
       *[other] { $unit }
    } de large
strips-one-measure = dans une bande large comme la première mesure
strips-several-measure = dans { $strips } bandes larges comme la première mesure
strips-template = { $strips }, au gabarit
strips-cut = { $strips }, { $cuts }
strips-one-layer = { $strips }, une seule épaisseur, endroit visible
strips-at = couper à { $angle }°
strips-at-every = couper à { $angle }° tous les { $every }
strips-at-points = couper à { $angle }° tous les { $every } ; puis abattre les deux pointes aiguës, à { $across } l’une de l’autre
strips-end-one = un bout coupé à { $angle }°
strips-ends-both = les deux bouts coupés à { $angles }
strips-square-turn = couper tour à tour d’équerre et à { $angle }°
strips-square-turn-every = couper tour à tour d’équerre et à { $angle }° tous les { $every } le long du bord le plus long
strips-turn = couper à { $angles }, en tournant la règle chaque fois
strips-turn-every = couper à { $angles } tous les { $every } le long du bord le plus long, en tournant la règle chaque fois
strips-angle = { $angle }°
strips-angles = { $first }° et { $second }°
strips-second-measure = deuxième mesure

lies-upright = motif dans le bon sens
lies-print-long = motif dressé dans le sens du grand côté
lies-print-short = motif dressé dans le sens du petit côté
lies-short-down = petit côté en bas, { $how }
lies-one-layer = une seule épaisseur, endroit visible
lies-edge = pour le bord du bloc
lies-edge-and = pour le bord du bloc, { $lies }
lies-rising = { $lies } : couper une fois du coin inférieur gauche au coin supérieur droit
lies-falling = { $lies } : couper une fois du coin supérieur gauche au coin inférieur droit
lies-rising-opposite = { $lies } : couper une fois du coin inférieur gauche au coin supérieur droit (en sens inverse de { $letter })
lies-falling-opposite = { $lies } : couper une fois du coin supérieur gauche au coin inférieur droit (en sens inverse de { $letter })
lies-cut = { $lies } { $then }
lies-after = { $then }, { $lies }

angle-title = Coupes en biais
angle-aside = tissu endroit visible ; les tirets sont les coupes
angle-one-size = Les mesures de ces images valent pour le bloc de { $size }.
angle-layers = Quand une image indique « une seule épaisseur », ne pas plier le tissu : l’épaisseur du dessous donnerait l’image en miroir.
angle-ruler = Mettre d’abord le bout de la bande d’équerre, poser la ligne d’angle de la règle sur son bord, et couper en s’éloignant de soi.
angle-corners = Marquer les deux bords à cette distance de chaque coin, poser la règle d’une marque à l’autre, et abattre le coin en s’éloignant de soi. Toutes les épaisseurs se coupent de même.
angle-octagon = octogone, coins abattus
angle-rectangle = rectangle, coupé une fois
angle-turned = { $piece }, tourné par rapport au précédent
angle-one-layer = { $what }, une seule épaisseur
angle-edge = { $what }, pour le bord du bloc
angle-one-layer-edge = { $what }, une seule épaisseur, pour le bord du bloc

units-title = Unités à faire
units-title-size = Unités à faire, { $size }
units-aside = mesurer chacune avant l’assemblage
units-make = En faire { $count }
units-spare = , { $count } en trop
units-finished = Fini { $size }
units-method = Méthode : { $method }
units-measure = Doit mesurer { $size }
units-head-block = bloc
units-head-measure = doit mesurer
units-head-finished = fini

method-cut-patches = assemblage traditionnel
method-two-at-a-time = méthode à deux
method-four-at-a-time = méthode à quatre
method-eight-at-a-time = méthode à huit
method-stitch-and-flip = coins rabattus
method-strip-set = ensemble de bandes
method-foundation = couture sur papier
method-over-papers = gabarits de papier
method-applique = appliqué

methods-title = Comparaison des méthodes
methods-aside = en gras : la méthode suivie ici
methods-head-method = Méthode
methods-head-cut = Couper
methods-head-waste = Tissu perdu en coutures et recoupes, { $unit ->
        [in] po
       *[other] { $unit }
    } carrés
methods-head-seams = Coutures
methods-unit = { $unit }, en faire { $count }
methods-spare = { $method } ({ $count } en trop)
methods-cut = { $count } { $piece } en { $fabric } de { $size }
methods-cut-once = { $count } { $piece } en { $fabric } de { $size }, à couper une fois
methods-cut-twice = { $count } { $piece } en { $fabric } de { $size }, à couper deux fois

cutters-title = Vos emporte-pièces
cutters-aside = ce que chacun coupe, d’après les lettres du tableau de coupe
cutters-none = Aucun ne convient à une pièce de ce bloc.
cutters-lacking = aucun emporte-pièce ne convient
cutters-lacking-what = { $patches } : { $cutter }
cutters-patches = { $count ->
        [one] pièce { $letters }
       *[other] pièces { $letters }
    }
cutters-wide = { $shape }, { $size } de large
cutters-finished = { $shape }, { $size } fini
cutters-half = demi-carré en triangle
cutters-quarter = quart de carré en triangle
cutters-diamond = losange à 45°

recut-aside = tous les autres tissus se coupent comme avant
recut-same = { $pieces }, comme dans le tableau de coupe
recut-all = { $pieces } : { $cuts }
recut-line = { $count } { $piece } { $size }, pièce { $letter }
recut-line-then = { $count } { $piece } { $size }, pièce { $letter }, { $then }
recut-template = { $count } { $piece }, pièce { $letter }
recut-template-then = { $count } { $piece }, pièce { $letter }, { $then }
sizes-cutting-aside = une colonne par taille finie ; mesures de coupe, marge de couture comprise

picture-block = { $block } en couleur : { $size } fini, { $patches } en { $fabrics }.
picture-block-colorway = { $block }, coloris { $name }, en couleur : { $size } fini, { $patches } en { $fabrics }.
picture-fabric = { $fabric } ({ $value })
picture-letters = Schéma de { $block } avec ses lettres : { $letters }.
picture-letter = { $count ->
        [one] { $number } pièce { $letter }
       *[other] { $number } pièces { $letter }
    }
picture-unit = Unité { $unit } : { $size } fini, { $patches }.
picture-grid = Grille de { $block } : { $columns } colonnes et { $rows } rangées, chaque case { $size } fini.
picture-grid-uneven = Grille de { $block } : colonnes de { $widths } { $unit ->
        [in] po
       *[other] { $unit }
    } de large, rangées de { $heights } { $unit ->
        [in] po
       *[other] { $unit }
    } de haut, finies.
picture-apart = Étape { $number }, { $name } : les parties séparées, { $parts }.
picture-joined = { $count ->
        [one] Étape { $number }, { $name } : les parties assemblées par 1 couture ; les flèches montrent où coucher les coutures.
       *[other] Étape { $number }, { $name } : les parties assemblées par { $count } coutures ; les flèches montrent où coucher les coutures.
    }
picture-joined-curved = { $count ->
        [one] Étape { $number }, { $name } : les parties assemblées par 1 couture courbe ; les flèches montrent où coucher les coutures.
       *[other] Étape { $number }, { $name } : les parties assemblées par { $count } coutures, dont une courbe ; les flèches montrent où coucher les coutures.
    }
picture-joined-partial = { $count ->
        [one] Étape { $number }, { $name } : les parties assemblées par 1 couture partielle ; les flèches montrent où coucher les coutures.
       *[other] Étape { $number }, { $name } : les parties assemblées par { $count } coutures, dont une partielle ; les flèches montrent où coucher les coutures.
    }
picture-joined-set-in = { $count ->
        [one] Étape { $number }, { $name } : les parties assemblées par 1 couture insérée ; les flèches montrent où coucher les coutures.
       *[other] Étape { $number }, { $name } : les parties assemblées par { $count } coutures, dont une insérée ; les flèches montrent où coucher les coutures.
    }
picture-step = Étape { $number } : { $name }.

apart-step = { $name } (étape { $step })
apart-steps = { $count } { $name } (étape { $step })

steps-too-many = Ce bloc a { $count } pièces, trop pour une liste d’étapes : le coudre par rangées.

page-of = page { $page } sur { $pages }
sheet-subject = Fiche d’un bloc de patchwork, { $size } fini

sizes-head-finished = Fini
sizes-head-unfinished = Non fini
sizes-head-grid = Grille, finie
sizes-head-cells = Cases, non finies
sizes-head-seam = Couture
sizes-head-ruler = Lecture de la règle
sizes-uneven = inégale
sizes-cells = { $columns } × { $rows } de { $size }
sizes-cutting-for = Coupe pour { $sizes }
fabric-continued = {"  "}suite
steps-step-continued = Étapes, étape { $number }
steps-aside = coudre dans cet ordre ; les images montrent l’endroit, sans marges de couture
steps-key-seam = couture à faire maintenant
steps-key-press = coucher les marges de couture de ce côté
steps-key-letter = lettre de la pièce, comme dans le schéma
steps-key-dot = s’arrêter à une marge de couture du bord ; une pièce s’insère ici plus tard
steps-of = étape { $number } sur { $count }
