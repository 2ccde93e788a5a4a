# La fiche d’un quilt : achats, coupe, blocs à faire, assemblage, finition.

quilt-sheet-subject = Modèle de quilt, { $size } fini
quilt-set = Montage
quilt-blocks = Blocs
quilt-half-blocks = { $count ->
        [one] et { $count } demi-bloc
       *[other] et { $count } demi-blocs
    }
setting-straight = montage droit, { $across } × { $down }
setting-dropped-columns = colonnes décalées, { $across } × { $down }
setting-on-point = montage sur la pointe, { $across } × { $down }
setting-strippy = montage en bandes, { $across } × { $down }
setting-rows = rangée par rangée
setting-medallion = médaillon
quilt-blocks-named = { $count } { $block }
quilt-colorway = coloris { $name }
quilt-center-measures = { $center } { $size }
quilt-ring-measures = { $ring } { $width }, { $fabric }
quilt-ring-measures-corners = { $ring } { $width }, { $fabric }, { $corners }
quilt-ring-pieced = en { $unit }

buy-title = Métrage
buy-head-buy = acheter
buy-head-needed = nécessaire
buy-head-allowed = lavage, équerrage
buy-tools = Il faut aussi : fil assorti, fil à bâtir ou épingles de sûreté, épingles ou pinces ; cutter rotatif, plaque de découpe et règle ; fer ; machine à coudre avec pied { $foot }.
buy-foot-in = de ¼ po
buy-foot-cm = patchwork
buy-yards = { $amount } yd
buy-meters = { $amount } m
buy-prints = { $fabric }, { $prints }
buy-of-one-print = blocs, chacun dans un seul imprimé
buy-wider = tissu plus large
buy-too-narrow = un morceau est plus large que ce tissu
buy-backing = Dos : { $fabric }
buy-widths-of-fabric = { $widths } de tissu
buy-in-one-piece = d’un seul morceau
buy-based-in = Calculé pour une laize utile de { $widths } po. La réserve pour rétrécissement et équerrage est indiquée à part ; le total est arrondi au 1/8 yd supérieur (4 1/2 po).
buy-based-cm = Calculé pour une laize utile de { $widths } cm. La réserve pour rétrécissement et équerrage est indiquée à part ; le total est arrondi aux 10 cm supérieurs.
buy-fat-quarters = Fat quarters de { $size } au lieu d’un métrage : { $list }.
buy-fat-quarters-of = { $fabric } { $count }

quilt-cutting-fabric = Coupe : { $fabric }
quilt-cutting-aside-in = pour le quilt entier ; mesures en pouces, marge de couture comprise
quilt-cutting-aside-cm = pour le quilt entier ; mesures en centimètres, marge de couture comprise

assembly-title = Assemblage
assembly-aside = tout disposer d’après l’image avant de coudre
rows-title = Rangées
rows-head-row = rangée
rows-head-takes = contient
rows-head-measure = doit mesurer, bords à cru
finishing-title = Finition
finishing-aside = superposer, matelasser, border
quilt-strips-listed = De la liste de coupe : { $sizes }.
quilt-strips-listed-spare = De la liste de coupe : { $sizes }. Chaque bande a { $spare } en trop.
quilt-strip-all = { $count ->
        [one] 1 bande
       *[other] { $count } bandes
    } { $size }
quilt-strip-sides = { $count ->
        [one] 1 bande
       *[other] { $count } bandes
    } { $size } pour les côtés
quilt-strip-ends = { $count ->
        [one] 1 bande
       *[other] { $count } bandes
    } { $size } pour le haut et le bas
quilt-strip-corners = { $count ->
        [one] 1 carré
       *[other] { $count } carrés
    } { $size } pour les coins

quilt-picture = Le quilt { $quilt } : { $setting }, { $blocks }, { $borders }, { $size } fini.
quilt-rows-picture = { $count ->
        [one] La rangée de { $quilt }.
       *[other] Les { $count } rangées de { $quilt } dessinées séparément, dans l’ordre de l’assemblage.
    }

kind-mirror-image = { $name }, en miroir
kind-upper-half = { $name }, moitié du haut
kind-lower-half = { $name }, moitié du bas
kind-left-half = { $name }, moitié gauche
kind-right-half = { $name }, moitié droite
kind-border-unit = { $name }, unité de bordure
kind-with-mirror-image = { $name } et son image en miroir

quilt-cutting-aside = couper d’abord les morceaux dans la longueur, puis les bandes les plus larges
head-in-the-picture = sur l’image
quilt-then-once = couper chacun une fois d’un coin à l’autre
quilt-then-twice = couper chacun deux fois d’un coin à l’autre
quilt-then-lengthwise = couper dans la longueur
quilt-then-strip = puis suivre les instructions du bloc
quilt-then-octagon = puis abattre les coins, selon les instructions du bloc
quilt-then-template = autour de son gabarit
cloth-from-prints = Ses blocs se coupent dans des fat quarters, chaque bloc dans un seul imprimé ; seul le reste se coupe au métrage.
cloth-shortest = Disposé comme ci-dessous, il faut { $length } de tissu : la disposition la plus courte pour des bandes ainsi coupées.
cloth-within = Disposé comme ci-dessous, il faut { $length } de tissu : à { $more } près, la disposition la plus courte.
cloth-joined = { $count ->
        [one] Pour { $letters } : couper { $strips } de { $width } de large à la longueur.
       *[other] Pour { $letters } : coudre bout à bout { $strips } de { $width } de large par des coutures droites, ouvrir les coutures au fer, et couper à la longueur.
    }

cloth-strips = { $strips } de { $height } de large
cloth-strips-of = { $strips } de { $height } de large : { $pieces }
cloth-lengths = { $lengths } de { $height }, dans le sens de la longueur
cloth-beside = à côté, { $strips }
cloth-sheets = { $pieces } de { $size }
cloth-piece = { $count } { $letter }, { $size }
cloth-piece-plain = { $count } de { $size }
cloth-picture = { $what } : { $pieces }.

blocks-title = Blocs à faire
blocks-title-one = Blocs à faire : { $block }
blocks-aside = en coudre un et le mesurer avant la coupe de tous les autres
blocks-make-each = en faire { $count }, chacun { $size } non fini
blocks-in-colorway = dans le coloris { $name }
blocks-half = demi-bloc
blocks-for-border = pour la bordure
blocks-about = { $size } fini ; { $patches }
blocks-totals = La dernière colonne donne le total du quilt ; les unités faites par lots sont comptées sur tous ses blocs.
cutting-one = Coupe pour un bloc

prints-title = Imprimés pour { $fabric }
prints-fat-quarter = { $count ->
        [one] Un fat quarter, coupé pour { $number } bloc ; les lettres sont celles des pièces.
       *[other] Un fat quarter, coupé pour { $number } blocs ; les lettres sont celles des pièces.
    }
prints-numbered = Chaque bloc est fait d’un seul imprimé, numéroté comme sur l’image.
prints-apart = Deux blocs voisins n’ont jamais le même imprimé.
prints-share-least = { $count ->
        [one] { $count } paire de blocs voisins a le même imprimé : le moins possible avec si peu d’imprimés.
       *[other] { $count } paires de blocs voisins ont le même imprimé : le moins possible avec si peu d’imprimés.
    }
prints-share = { $count ->
        [one] { $count } paire de blocs voisins a le même imprimé : aucune répartition n’en a moins de { $bound } avec si peu d’imprimés.
       *[other] { $count } paires de blocs voisins ont le même imprimé : aucune répartition n’en a moins de { $bound } avec si peu d’imprimés.
    }
prints-used = { $count ->
        [one] Chaque imprimé sert à { $count } bloc.
       *[other] Chaque imprimé sert à { $count } blocs.
    }
prints-used-or = Chaque imprimé sert à { $least } ou { $most } blocs.
prints-used-to = Chaque imprimé sert à { $least } à { $most } blocs.
prints-gives = { $count ->
        [one] Un fat quarter donne { $count } bloc.
       *[other] Un fat quarter donne { $count } blocs.
    }
prints-takes-more = Un bloc demande plus d’un fat quarter.
prints-picture = { $count ->
        [one] Le quilt avec le numéro de l’imprimé sur son bloc.
       *[other] Le quilt avec le numéro de l’imprimé sur chacun de ses { $count } blocs.
    }
prints-blocks-quarters = { $blocks }, { $quarters }

buy-head-what = quoi
buy-caption = Métrage pour { $quilt }
quilt-without-borders = { $size } sans bordures
quilt-cutting-caption-in = Morceaux en { $fabric } pour { $quilt } : mesures en pouces, marge de couture comprise
quilt-cutting-caption-cm = Morceaux en { $fabric } pour { $quilt } : mesures en centimètres, marge de couture comprise
rows-caption = Rangées de { $quilt }
rows-tick = { $rows }, { $size }
