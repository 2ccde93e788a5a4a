# Les leçons des méthodes, telles que livres et sites les enseignent : pour qui n’a jamais cousu.

cut-square = carré de { $side }
cut-rectangle = rectangle de { $size }

picture = { $shows }.
picture-right = { $shows }, pour droitière.
picture-left = { $shows }, pour gauchère.

## Carrés et rectangles

lesson-squares-cut = Mettre le bout de la bande d’équerre, puis couper un morceau à la mesure du tableau de coupe. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi.
    .title = Couper
lesson-squares-lay = Poser deux pièces endroit contre endroit (faces imprimées à l’intérieur), bords alignés. Épingler en travers de la couture ; retirer chaque épingle avant que l’aiguille l’atteigne.
    .title = Superposer
lesson-squares-sew = Coudre à { $seam } du bord, d’un bout à l’autre, à petits points. Faire d’abord une couture d’essai : deux carrés de { $side } cousus ensemble doivent mesurer { $size }.
    .title = Coudre
lesson-squares-press = Repasser la couture telle que cousue, puis ouvrir les pièces et { $press ->
        [open] ouvrir la couture avec la pointe du fer.
       *[side] coucher la couture vers la pièce la plus foncée. Dans les rangées, coucher une rangée sur deux dans l’autre sens, pour que les coutures s’emboîtent.
    }
    .title = Repasser
lesson-squares-measure = Mesurer avant de continuer. Au milieu d’une rangée, une pièce montre sa taille finie ; seuls les bouts ont encore leur marge de couture.
    .title = Mesurer

picture-square-from-strip = Un carré coupé dans une bande
picture-squares-together = Deux carrés endroit contre endroit
picture-squares-sewn = Une couture le long du bord droit de deux carrés
picture-squares-opened = Deux carrés ouverts ; les flèches montrent où coucher la couture
picture-squares-joined = Deux carrés assemblés, avec leurs mesures

## Demi-carrés en triangle

lesson-half-cut = { $count ->
        [2] Couper un { $piece } de chaque tissu pour deux unités.
       *[8] Couper un { $piece } de chaque tissu pour huit unités.
    }
    .title = Couper
lesson-half-mark = Retourner le carré le plus clair sur l’envers. Tracer au crayon une ligne fine d’un coin à l’autre. Elle sert à couper, non à coudre.
    .title = Tracer une ligne
lesson-half-two-sew = Poser sur l’autre carré, endroit contre endroit (faces imprimées à l’intérieur), bords alignés, et épingler. Coudre à { $seam } de la ligne d’un côté, tourner, et coudre de l’autre côté. (Le coin n’est rabattu que pour montrer les épaisseurs.)
    .title = Faire deux coutures
lesson-half-two-cut-apart = Tourner les carrés pour que la ligne s’éloigne tout droit de soi. Y tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi. Chaque moitié devient une unité.
    .title = Couper sur la ligne
lesson-half-eight-mark = Retourner le carré le plus clair sur l’envers. Tracer au crayon une ligne fine d’un coin à l’autre dans les deux sens, pour que les lignes se croisent au milieu. Elles servent à couper, non à coudre.
    .title = Tracer deux lignes
lesson-half-eight-sew = Poser sur l’autre carré, endroit contre endroit (faces imprimées à l’intérieur), bords alignés, et épingler. Coudre à { $seam } de chaque ligne, des deux côtés : quatre coutures, tout droit à travers le croisement. (Le coin n’est rabattu que pour montrer les épaisseurs.)
    .title = Faire quatre coutures
lesson-half-eight-quarter = Sans déplacer le tissu, couper en deux dans les deux sens par le milieu, à { $half } des bords. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi. Pour la seconde coupe, faire le tour de la table ou tourner la plaque.
    .title = Couper en quarts
lesson-half-eight-cut-apart = Couper chaque quart sur la ligne tracée, entre les deux coutures : huit moitiés.
    .title = Couper sur les lignes
lesson-half-triangles-cut = Tourner le carré, un coin vers soi. Tenir la règle d’un coin à l’autre la main à plat et pousser le cutter en s’éloignant de soi : deux triangles. Leurs bords longs s’étirent ; les manier avec douceur.
    .title = Couper d’un coin à l’autre
lesson-half-triangles-sew = Poser un triangle de chaque tissu endroit contre endroit (faces imprimées à l’intérieur), tous les bords alignés. Coudre à { $seam } du bord long. Ne pas tirer : laisser la machine entraîner le tissu.
    .title = Longue couture
lesson-half-press = Repasser la couture telle que cousue, puis ouvrir l’unité et { $press ->
        [open] ouvrir la couture au fer.
       *[side] coucher la couture vers le tissu le plus foncé.
    } Poser le fer et le relever ; en glissant, il étire le tissu.
    .title = Repasser
lesson-half-trim = Couper les deux oreilles qui dépassent. Si l’unité est trop grande, poser la ligne à 45° de la règle sur la couture et recouper les quatre bords.
    .title = Recouper
lesson-half-measure = { $count ->
        [1] L’unité doit maintenant mesurer { $size }.
        [2] Chacune des deux unités doit maintenant mesurer { $size }.
       *[8] Chacune des huit unités doit maintenant mesurer { $size }.
    }
    .title = Mesurer

picture-squares = Les carrés à couper
picture-square-marked = Un carré, envers visible, avec une ligne en diagonale
picture-square-marked-twice = Un carré, envers visible, avec les deux diagonales
picture-sewn-both-sides = Deux carrés superposés, une couture de chaque côté d’une ligne en diagonale
picture-sewn-four-times = Deux carrés superposés, une couture de chaque côté des deux diagonales
picture-cut-on-line = Deux carrés superposés, à couper sur la ligne entre les coutures
picture-cut-quarters = Les carrés à couper en deux dans les deux sens
picture-quarter-cut = Un quart à couper entre ses deux coutures
picture-cut-once = Un carré à couper une fois d’un coin à l’autre
picture-cut-twice = Un carré à couper deux fois d’un coin à l’autre
picture-half-long-seam = Deux triangles superposés, une couture le long du bord long
picture-half-opened = Un demi-carré en triangle ouvert ; les flèches montrent où coucher la couture
picture-half-ears = Un demi-carré en triangle, les deux oreilles à couper
picture-half-measured = Un demi-carré en triangle, { $size }

## Sablier, quarts de carré, carré à trois triangles

lesson-hourglass-cut = Couper un { $piece } de chaque tissu.
    .title = Couper
lesson-quarters-cut = Couper un { $piece } de chaque tissu.
    .title = Couper
lesson-split-cut = Pour quatre unités, couper deux fois un { $large } pour les grands triangles et un { $piece } de chaque tissu des petits.
    .title = Couper
lesson-quarters-sew = Tracer une ligne d’un coin à l’autre sur l’envers du carré le plus clair. Poser les carrés endroit contre endroit (faces imprimées à l’intérieur), bords alignés, et épingler. Coudre à { $seam } de la ligne, des deux côtés.{ $kind ->
        [quarters] { " " }Faire de même avec l’autre paire.
       *[other] { "" }
    }
    .title = Tracer et coudre
lesson-quarters-cut-apart = Tourner les carrés pour que la ligne s’éloigne tout droit de soi. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi.
    .title = Couper sur la ligne
lesson-quarters-press = { $press ->
        [open] Ouvrir chaque moitié et ouvrir la couture au fer.
       *[side] Ouvrir chaque moitié et coucher la couture vers le tissu le plus foncé.
    } On obtient des demi-carrés en triangle de { $side } de côté : ils sont plus grands que l’unité finie, ne pas les recouper.
    .title = Repasser
lesson-hourglass-cross = Sur l’envers d’une des deux unités, tracer une ligne d’un coin à l’autre en travers de la couture. La poser sur l’autre, endroit contre endroit, chaque tissu sur l’autre tissu. { $press ->
        [open] Aligner les coutures et épingler.
       *[side] Emboîter les coutures et épingler.
    } Coudre à { $seam } de la ligne, des deux côtés, et couper sur la ligne.
    .title = Croiser
lesson-quarters-cross = Poser une unité d’une paire sur une unité de l’autre, endroit contre endroit, les deux tissus qui seront voisins l’un sur l’autre. { $press ->
        [open] Aligner les coutures et épingler.
       *[side] Emboîter les coutures et épingler.
    } Tracer une ligne d’un coin à l’autre en travers de la couture. Coudre à { $seam } des deux côtés et couper sur la ligne.
    .title = Croiser
lesson-split-cross = Poser une unité sur chaque grand carré, endroit contre endroit. Tracer une ligne d’un coin à l’autre en travers de la couture. Coudre à { $seam } des deux côtés et couper sur la ligne.
    .title = Croiser
lesson-quarters-trim = Ouvrir, repasser et couper les oreilles. Pour recouper à la taille, poser la ligne à 45° de la règle sur une couture, le croisement à { $half } des deux bords de la règle.
    .title = Repasser et recouper
lesson-quarters-measure = { $kind ->
        [one] L’unité doit maintenant mesurer { $size }, les coutures arrivant dans les coins.
        [hourglass] Chacune des deux unités doit maintenant mesurer { $size }, les coutures arrivant dans les coins.
       *[other] Chacune des quatre unités doit maintenant mesurer { $size }, les coutures arrivant dans les coins. Deux sont en miroir des deux autres : les poser toutes dans le même sens, comparer, et garder la sorte que demande le bloc.
    }
    .title = Mesurer
lesson-quarters-triangles-cut = Couper deux fois d’un coin à l’autre chaque { $small } : il donne quatre petits triangles. Une unité en prend quatre, un par quart.
    .title = Couper
lesson-split-triangles-cut = Couper deux fois d’un coin à l’autre chaque { $small } : il donne quatre petits triangles. Couper une fois chaque { $large } : il donne deux grands triangles. Une unité prend un grand et deux petits.
    .title = Couper
lesson-quarters-triangles-apart = Tourner le carré, un coin vers soi, et couper d’un coin à l’autre en s’éloignant de soi. Pour les petits triangles, couper encore dans l’autre sens sans déplacer les pièces : quatre. Leurs bords longs sont dans le droit-fil et viennent à l’extérieur de l’unité.
    .title = Couper d’un coin à l’autre
lesson-quarters-triangles-pairs = Poser deux petits triangles endroit contre endroit et coudre à { $seam } d’un bord court. Coudre depuis l’angle droit et garder toujours le même tissu au-dessus, sinon les paires sortent en miroir.
    .title = Coudre les paires
lesson-quarters-triangles-press = { $press ->
        [open] Ouvrir chaque paire et ouvrir la couture au fer.
       *[side] Ouvrir chaque paire et coucher la couture vers le tissu le plus foncé.
    }
    .title = Repasser
lesson-quarters-triangles-long = { $kind ->
        [split] Poser la paire sur le grand triangle, endroit contre endroit, bords longs alignés,
       *[other] Poser une paire sur l’autre, endroit contre endroit, bords longs alignés, { $press ->
        [open] coutures alignées,
       *[side] coutures emboîtées,
    }
    } et coudre le bord long. Repasser. Couper les oreilles.
    .title = Longue couture

picture-two-halves-opened = Deux demi-carrés en triangle, repassés
picture-crossed = Deux unités superposées, cousues des deux côtés d’une ligne qui croise la couture, et coupées dessus
picture-quarters-opened = L’unité ouverte, avec ses oreilles aux coins
picture-quarters-measured = L’unité, { $size }
picture-quarters-short-seam = Deux triangles superposés, une couture le long d’un bord court
picture-pair-opened = Une paire de triangles ouverte ; les flèches montrent où coucher la couture

## Vol d’oies

lesson-geese-four-cut = Pour quatre vols d’oies, couper un { $large } du tissu de l’oie et { $skies ->
        [1] quatre fois un { $small } du ciel.
       *[2] deux fois un { $small } de chaque ciel.
    } Tracer au crayon une ligne d’un coin à l’autre sur l’envers de chaque petit carré.
    .title = Couper et tracer
lesson-geese-four-sew = Poser deux petits carrés, endroit contre endroit, sur deux coins opposés du grand ; ils se chevauchent un peu au milieu, et leurs lignes n’en font qu’une. Coudre à { $seam } de la ligne, des deux côtés.
    .title = Coudre deux petits carrés
lesson-geese-four-cut-apart = Tourner le carré pour que la ligne s’éloigne tout droit de soi. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi.
    .title = Couper sur la ligne
lesson-geese-four-press = { $press ->
        [open] Ouvrir au fer les coutures des petits triangles.
       *[side] Rabattre au fer les petits triangles à l’opposé du grand.
    } Chaque moitié ressemble à un cœur.
    .title = Repasser
lesson-geese-four-last = Poser un petit carré, endroit contre endroit, sur l’angle droit de chaque cœur, la ligne dans le creux entre les deux petits triangles. Coudre à { $seam } de la ligne, des deux côtés, puis couper sur la ligne.
    .title = Coudre les derniers carrés
lesson-geese-four-press-last = { $press ->
        [open] Ouvrir aussi les dernières coutures au fer : quatre vols d’oies.
       *[side] Rabattre aussi les derniers triangles vers l’extérieur : quatre vols d’oies.
    } Couper les oreilles.
    .title = Repasser encore
lesson-geese-measure = { $made ->
        [four] Au besoin, recouper chacun des quatre vols d’oies à { $size }.
       *[one] L’unité doit maintenant mesurer { $size }.
    } Les coutures du bas arrivent dans les coins. Garder { $seam } entre la pointe de l’oie et le bord, sinon la pointe disparaît dans la couture.
    .title = Recouper et mesurer
lesson-geese-triangles-cut = Couper, pour l’oie, { $large } ; pour le ciel, { $small }. Une oie prend le quart d’un grand carré et deux moitiés de petits.
    .title = Couper
lesson-geese-triangles-apart = Tourner le carré, un coin vers soi, tenir la règle la main à plat et pousser le cutter en s’éloignant de soi. Couper le grand carré dans les deux sens sans déplacer les pièces : quatre. Couper le petit une fois : deux.
    .title = Couper d’un coin à l’autre
lesson-geese-triangles-first = Poser un triangle de ciel sur le bord court gauche de l’oie, endroit contre endroit, les coins du bas alignés ; son bout dépasse la pointe de l’oie. Coudre à { $seam } du bord.
    .title = Coudre le premier ciel
lesson-geese-triangles-press = { $press ->
        [open] Ouvrir et ouvrir la couture au fer.
       *[side] Ouvrir et coucher la couture vers le ciel.
    } Couper les oreilles.
    .title = Repasser
lesson-geese-triangles-second = Poser de même le second triangle de ciel sur l’autre bord. Sa couture croise la première juste au-dessus de la pointe de l’oie. { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers le ciel.
    }
    .title = Coudre le second ciel

picture-five-squares = Un grand carré, et quatre petits avec une ligne tracée
picture-two-small-squares = Deux petits carrés sur des coins opposés du grand, une couture de chaque côté de leur ligne
picture-large-square-cut = Le grand carré à couper entre les coutures
picture-heart = Un grand triangle avec deux petits rabattus vers l’extérieur
picture-third-small-square = Un petit carré sur l’angle droit, cousu des deux côtés de sa ligne et coupé
picture-goose-opened = Un vol d’oies ouvert, avec ses oreilles
picture-goose-measured = Un vol d’oies, { $size }
picture-large-and-small-square = Un grand et un petit carré
picture-first-sky = Un triangle de ciel sur le bord gauche de l’oie, cousu
picture-first-sky-opened = L’oie, son ciel gauche ouvert
picture-second-sky = Le second triangle de ciel posé et cousu

## Carré dans un carré

lesson-diamond-cut = Couper un { $middle } pour le milieu et deux fois un { $corner } pour les coins.
    .title = Couper
lesson-diamond-cut-corners = Tourner un carré de coin, un coin vers soi, et le couper une fois d’un coin à l’autre en s’éloignant de soi : deux triangles par carré, quatre en tout.
    .title = Couper d’un coin à l’autre
lesson-diamond-two-sides = Plier en deux le carré du milieu et le bord long de chaque triangle, et marquer le pli du doigt. Poser un triangle sur un côté, endroit contre endroit, pli sur pli, et coudre à { $seam } du bord. Coudre de même le triangle opposé.
    .title = Coudre deux côtés
lesson-diamond-press = { $press ->
        [open] Ouvrir les deux coutures au fer
       *[side] Coucher les deux coutures vers les triangles
    } et couper les oreilles.
    .title = Repasser et recouper
lesson-diamond-others = Coudre de même les deux autres triangles, pli sur pli, { $press ->
        [open] et ouvrir les coutures au fer.
       *[side] et coucher les coutures vers eux.
    }
    .title = Coudre les autres
lesson-diamond-measure = L’unité doit maintenant mesurer { $size }, avec { $seam } au-delà de chaque pointe du carré du milieu.
    .title = Mesurer

picture-diamond-first = Un triangle sur un côté du carré du milieu, cousu
picture-diamond-two-opened = Le carré du milieu, deux triangles opposés ouverts
picture-diamond-third = Un troisième triangle posé et cousu
picture-diamond-measured = L’unité, { $size }

## Coins rabattus

lesson-flip-cut = { $count ->
        [1] Pour chaque unité, couper un { $base } pour la base et un { $small } pour le coin.
        [2] Pour chaque unité, couper un { $base } pour la base et deux fois un { $small } pour les coins.
        [3] Pour chaque unité, couper un { $base } pour la base et trois fois un { $small } pour les coins.
       *[4] Pour chaque unité, couper un { $base } pour la base et quatre fois un { $small } pour les coins.
    }
    .title = Couper
lesson-flip-mark = Sur l’envers de chaque petit carré, tracer au crayon une ligne fine d’un coin à l’autre. Cette fois, on coudra le long de la ligne.
    .title = Tracer une ligne
lesson-flip-sew = Poser un petit carré sur un coin de la base, endroit contre endroit (faces imprimées à l’intérieur), la ligne en travers du coin. Coudre juste à côté de la ligne, à un fil vers le coin : le pli en prend autant.
    .title = Coudre le long de la ligne
lesson-flip-cut-corner = Couper à { $seam } à l’extérieur de la couture, à travers les deux épaisseurs. La règle couvre la partie que l’on garde : la tenir la main à plat et pousser le cutter en s’éloignant de soi.
    .title = Abattre le coin
lesson-flip-press = Rabattre le triangle sur la couture, endroit visible, et repasser. Ses bords doivent s’aligner sur ceux de la base. Sinon, coudre le suivant un fil plus près du coin.
    .title = Rabattre et repasser
lesson-flip-repeat = { $count ->
        [2] Faire de même à l’autre bout.
       *[other] Faire de même aux autres coins, l’un après l’autre.
    }{ $overlap ->
        [yes] { " " }Les carrés se chevauchent, comme il se doit : il reste { $seam } au-delà de la pointe.
       *[no] { "" }
    }
    .title = Répéter
lesson-flip-measure = Chaque unité doit maintenant mesurer { $size }, comme la base à la coupe.
    .title = Mesurer

picture-base-and-square = La base et un petit carré
picture-corner-sewn = Un petit carré sur un coin de la base, cousu le long de sa ligne
picture-next-corner-sewn = Le petit carré suivant posé et cousu
picture-corner-cut-off = Le coin abattu à l’extérieur de la couture
picture-corner-flipped = Le coin rabattu sur sa couture
picture-flip-measured = L’unité terminée, { $size }

## Ensembles de bandes

lesson-strips-cut = Couper des bandes de { $width } de large en travers du tissu, après avoir mis son bout d’équerre. Couper les lisières (les bords tissés serré).
    .title = Couper les bandes
lesson-strips-sew = Poser deux bandes endroit contre endroit (faces imprimées à l’intérieur) et coudre à { $seam } du bord long. Ajouter les autres une à une ; commencer chaque couture au bout où finit la précédente, pour que l’ensemble ne se courbe pas.
    .title = Assembler
lesson-strips-press = { $press ->
        [open] Ouvrir toutes les coutures au fer.
       *[side] Coucher toutes les coutures vers la bande la plus foncée.
    } Poser et relever le fer le long de la bande, pour que l’ensemble reste droit. Les coutures ne doivent pas faire de pli sur l’endroit.
    .title = Repasser
lesson-strips-segments = Mettre un bout d’équerre : poser une ligne de la règle sur une couture. Couper ensuite des segments de { $width } de large, en tenant la règle la main à plat et en s’éloignant de soi. Remettre d’équerre tous les trois segments. Un ensemble se coupe { $first } plus long pour l’équerrage, et { $again } chaque fois qu’on le remet d’équerre.
    .title = Couper les segments
lesson-rails-measure = Chaque segment est une unité. Il doit mesurer { $size }.
    .title = Mesurer
lesson-checker-lay = { $sets ->
        [1] Tourner un segment sur deux, pour alterner les tissus.
       *[2] Les rangées d’un nombre impair de pièces demandent un second ensemble qui commence par l’autre tissu ; prendre tour à tour des segments des deux.
    }
    .title = Disposer
lesson-checker-join = Poser deux segments endroit contre endroit. { $meet ->
        [match] Aligner les coutures et épingler.
       *[nest] Emboîter les coutures et épingler.
    } Coudre à { $seam } du bord. { $meet ->
        [match] Ouvrir la couture au fer.
       *[nest] Coucher la couture d’un côté.
    }
    .title = Assembler
lesson-checker-measure = L’unité doit maintenant mesurer { $size }, les coins des pièces se rejoignant.
    .title = Mesurer

picture-strips = Des bandes de chaque tissu
picture-strips-sewn = Deux bandes endroit contre endroit, cousues le long d’un bord
picture-strip-set = L’ensemble de bandes ouvert ; les flèches montrent où coucher les coutures
picture-segments-cut = L’ensemble de bandes coupé en travers en segments
picture-segment = Un segment, { $size }
picture-segments-laid = Des segments disposés pour alterner les tissus
picture-segments-sewn = Deux segments endroit contre endroit, cousus
picture-checker-measured = L’unité, { $size }

## Étoiles en nombreux losanges

lesson-star-strips-cut = Couper les bandes du tableau de coupe en travers du tissu, ici de { $width } de large, après avoir mis son bout d’équerre. Couper les lisières (les bords tissés serré).
    .title = Couper les bandes
lesson-star-strips-sew = Chaque rangée d’un grand losange a son propre ensemble de bandes, avec les tissus de cette rangée du milieu vers l’extérieur : le premier commence par le tissu du milieu de l’étoile, le deuxième par le suivant, et ainsi de suite. Poser chaque bande endroit contre endroit sur la précédente, mais commencer { $step } plus loin, pour que les bouts descendent en escalier à 45°. Coudre à { $seam } du bord. Coucher les coutures d’un ensemble dans un sens, celles du suivant dans l’autre : elles s’emboîteront.
    .title = Coudre un ensemble par rangée
lesson-star-segments = Poser la ligne à 45° de la règle sur une couture et couper les bouts en escalier. Couper ensuite des segments de { $width } de large, mesurés d’équerre à la coupe : huit par ensemble pour une étoile. Tenir la règle la main à plat et couper en s’éloignant de soi. Reposer la ligne à 45° sur une couture à chaque coupe. Les bords coupés s’étirent : les manier avec douceur.
    .title = Couper à 45°
lesson-star-rows = Poser côte à côte les segments d’un grand losange, celui du premier ensemble au milieu de l’étoile. Superposer deux segments endroit contre endroit pour que leurs coutures se croisent à { $seam } du bord, et non au bord : y épingler à travers les deux. Assembler les rangées, et repasser. Faire huit grands losanges.
    .title = Assembler les rangées
lesson-star-points = Coudre les grands losanges par paires, les paires en moitiés, les moitiés en étoile, toujours du milieu vers l’extérieur. S’arrêter à { $seam } du bord au bout extérieur et faire un point d’arrêt : le fond s’y insère.
    .title = Assembler les branches
lesson-star-ground = Couper le grand carré deux fois d’un coin à l’autre : quatre triangles. En insérer un en haut, un en bas et un de chaque côté : coudre du point où s’arrête la couture au bord extérieur, d’abord un bord, puis l’autre. Insérer de même les carrés dans les coins. Coucher les coutures vers l’étoile.
    .title = Insérer le fond

picture-stepped-set = Trois bandes cousues et repassées, chacune décalée de la précédente
picture-cut-at-45 = L’ensemble coupé à 45 degrés
picture-star-rows = Trois rangées de trois petits losanges, séparées, et le grand losange
picture-star-points = Huit grands losanges assemblés en étoile
picture-star-ground = L’étoile avec ses triangles et ses carrés

## Courbes

lesson-curve-squares = Couper un carré pour chaque gabarit : un { $surround } pour le contour, un { $quarter } pour le quart de cercle. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi.
    .title = Couper les carrés
lesson-curve-cut = Imprimer les deux gabarits grandeur nature et mesurer leur carré témoin. En tracer le tour sur l’envers du tissu, la flèche dans le droit-fil, et couper aux ciseaux, ou avec un petit cutter rotatif poussé lentement en s’éloignant de soi. Reporter les petits traits sur le tissu.
    .title = Couper les courbes
lesson-curve-pin = Poser le contour sur le quart de cercle, endroit contre endroit, et épingler les repères du milieu l’un sur l’autre. Aligner et épingler ensuite les bouts, puis les repères intermédiaires. Les bords sont de longueur inégale ; les lignes de couture, qui se rejoignent, non.
    .title = Aligner et épingler
lesson-curve-sew = Coudre avec le contour au-dessus, à { $seam } du bord, à petits points et lentement : mettre le bord supérieur à plat un peu en avant de l’aiguille, et retirer chaque épingle avant que l’aiguille l’atteigne.
    .title = Coudre
lesson-curve-press = Regarder la couture sur l’endroit ; s’il y a un pli, découdre à cet endroit et recoudre. Coucher la couture vers le contour, en relevant le fer sans le glisser. Si elle n’est pas plate, cranter la marge du contour à quelques endroits, jusqu’à la moitié au plus.
    .title = Repasser
lesson-curve-measure = L’unité doit maintenant mesurer { $size }. Si elle est un peu plus grande, la recouper avec les bouts de l’arc à { $end } des deux coins.
    .title = Mesurer

picture-curve-pieces = Un quart de cercle et son contour, chacun avec trois repères sur le bord courbe
picture-curve-pinned = Le bord courbe du contour le long du quart de cercle, envers visible, épinglé
picture-curve-sewn = La couture le long du quart de cercle, le contour au-dessus
picture-curve-opened = L’unité ouverte ; une flèche pointe vers le contour
picture-curve-measured = L’unité, { $size }

## Couture sur papier

lesson-papers-print = Imprimer un papier par unité en taille réelle et mesurer son carré témoin. Découper les papiers à l’extérieur du trait continu. Régler un point court, environ 1,5 mm : le papier se déchire mieux.
    .title = Imprimer les papiers
lesson-papers-first = Retourner le papier. Poser { $first } sur le côté vierge, endroit visible, sur la zone { $first } et au moins { $seam } au-delà tout autour ; regarder par transparence. Épingler.
    .title = Poser la première pièce
lesson-papers-sew = Poser { $second } sur { $first }, endroit contre endroit, un bord à { $seam } au-delà de la ligne entre les deux zones. Rabattre le long de la ligne : la pièce doit couvrir sa zone et { $seam } au-delà tout autour. La replier et l’épingler. Retourner le papier et coudre sur la ligne, de { $seam } avant à { $seam } après. (On voit ici le côté tissu.)
    .title = Coudre sur la ligne
lesson-papers-trim = Replier le papier le long de la couture. Couper les deux épaisseurs de tissu à { $seam } au-delà : tenir la règle la main à plat et pousser le cutter en s’éloignant de soi. Ne pas couper le papier.
    .title = Replier et recouper
lesson-papers-press = Rabattre { $second } sur la couture, endroit visible, et repasser à sec côté tissu : l’encre en poudre se détache sous un fer chaud.
    .title = Ouvrir et repasser
lesson-papers-go-on = Ajouter les autres pièces dans l’ordre des numéros : poser, coudre sur la ligne, recouper, repasser.
    .title = Continuer par numéro
lesson-papers-cut = Couper tissu et papier sur le trait continu, { $seam } à l’extérieur du tireté, de tous les côtés.{ $size ->
        [none] { "" }
       *[other] { " " }Le tout doit mesurer { $size }.
    } Laisser le papier jusqu’à ce que tous les bords soient cousus à d’autres.
    .title = Couper à la taille

picture-paper = Un papier imprimé, ses lignes et les numéros de ses zones
picture-paper-first = La première pièce sur le côté vierge ; les lignes imprimées se voient par transparence
picture-paper-placed = La deuxième pièce posée sur la première, envers visible, au-delà de la ligne entre les deux zones
picture-paper-sewn = La deuxième pièce posée et cousue le long de la ligne
picture-allowances-cut = Les marges coupées un peu à l’extérieur de la couture
picture-paper-opened = La deuxième pièce rabattue sur sa zone
picture-paper-all = Toutes les pièces cousues au papier
picture-paper-cut = Tissu et papier, à couper sur le trait continu
picture-paper-done = L’unité terminée

## Gabarits de papier

lesson-epp-cut = Imprimer les papiers en taille réelle et mesurer le carré témoin. Découper chacun exactement sur sa ligne : chaque pièce sera aussi juste que son papier. Ils sont sans marge de couture, et en miroir.
    .title = Découper les papiers
lesson-epp-pin = Poser un papier, côté imprimé visible, au milieu de l’envers de sa pièce, { $seam } de tissu tout autour et la flèche dans le droit-fil. Épingler.
    .title = Épingler
lesson-epp-fold = Rabattre une marge sur le bord du papier, puis la suivante, et ainsi tout autour : un pli net, sans fronces. Bâtir à grands points au fur et à mesure, un point sur chaque coin, et retirer l’épingle.
    .title = Plier et bâtir
lesson-epp-whip = Poser deux pièces endroit contre endroit, coin sur coin. Surjeter d’un coin à l’autre à petits points, cinq au centimètre, à travers les deux plis et non les papiers ; quelques points sur place aux deux bouts. Ouvrir : les points se voient à peine.
    .title = Surjeter deux bords
lesson-epp-next = Surjeter un bord de la pièce suivante et, au coin intérieur, ne pas couper le fil : plier les papiers pour réunir les deux bords suivants, et continuer.
    .title = Insérer la suivante
lesson-epp-take-out = Quand tous les bords d’une pièce sont cousus, la repasser à sec sur l’envers, tirer le bâti et retirer le papier ; il peut resservir. Le long du bord extérieur, déplier les marges et les repasser à plat : elles servent à joindre l’unité à la suivante.
    .title = Retirer les papiers

picture-epp-paper = Un papier à la taille finie avec sa lettre
picture-epp-pinned = Le papier épinglé sur l’envers d’un morceau de tissu
picture-epp-folded = Les marges rabattues sur le papier et bâties tout autour
picture-epp-whipped = Deux pièces surjetées le long d’un bord et ouvertes, vues de l’envers
picture-epp-set-in = Une troisième pièce insérée dans l’angle entre les deux, vue de l’envers
picture-epp-opened = Les trois pièces vues sur l’endroit

## Appliqué

lesson-applique-cut = Poser le gabarit sur l’endroit du tissu et tracer son tireté. Couper sur le trait continu, { $seam } à l’extérieur du tracé ou selon le gabarit. Couper en s’éloignant de la main qui tient le tissu.
    .title = Tracer et couper
lesson-applique-turn = Cranter la marge presque jusqu’au tracé dans les creux, et la recouper aux pointes. La rabattre sur l’envers le long du tracé, et bâtir ou marquer avec la pointe du fer. Ce qui sera sous une autre pièce reste à plat.
    .title = Rentrer les bords
lesson-applique-lay = Plier le fond en quatre et marquer légèrement : les plis montrent le milieu. Y poser les pièces comme sur l’image du bloc, celle du dessous d’abord, et épingler ou bâtir.
    .title = Poser
lesson-applique-sew = Sortir l’aiguille au ras du pli, piquer dans le fond juste à côté, et ressortir un peu plus loin, environ trois points au centimètre ; plus serré aux pointes et dans les creux. Prendre un fil de la couleur de la pièce.
    .title = Coudre
lesson-applique-raw = Couper la pièce sur la ligne, sans marge. La fixer au voile thermocollant ou à la colle à tissu, selon le mode d’emploi : travailler dans un lieu aéré, sans contact de la colle avec la peau. Coudre le tour d’un point serré qui couvre le bord, à la machine ou à la main.
    .title = Ou laisser à cru
lesson-applique-press = Retirer épingles et bâti et compter les épingles. Repasser sur l’envers, sur un support moelleux, pour que les pièces gardent leur relief.
    .title = Repasser

picture-applique-cut = La pièce coupée, son pli tracé à l’intérieur du bord
picture-applique-turned = La pièce, marge rentrée
picture-applique-laid = La pièce posée sur le fond marqué de plis
picture-applique-sewn = Petits points tout le long du bord plié
picture-applique-raw = Un point serré sur le bord à cru
picture-applique-done = La pièce terminée sur son fond

## Appliqué sur un bloc

lesson-applique-block-cut = { $letters } : tracer le tireté du gabarit sur l’endroit du tissu, et couper sur le trait continu, { $outside ->
        [one] { $width } à l’extérieur.
       *[several] à l’extérieur.
    } Couper en s’éloignant de la main qui tient le tissu.
    .title = Tracer et couper
lesson-applique-block-turn = Cranter la marge presque jusqu’à la ligne dans les creux. La rabattre sur l’envers le long de la ligne et bâtir ou repasser ; ce qui sera sous une autre pièce reste à plat.
    .title = Rentrer les bords
lesson-applique-block-raw = { $letters } : tracer et couper sur la ligne même ; rien n’est rentré. Un voile thermocollant ou de la colle à tissu, selon le mode d’emploi, dans un lieu aéré et sans contact avec la peau, tient la pièce en place.
    .title = Couper à cru
lesson-applique-block-lay = Repasser le bloc. Le plier en quatre et marquer légèrement pour trouver le milieu. { $order ->
        [one] Poser { $letters } comme sur l’image. Épingler ou bâtir.
        [alike] Poser les pièces { $letters } comme sur l’image. Épingler ou bâtir.
        [listed] Poser les pièces dans cet ordre, celle du dessous d’abord : { $letters }. Épingler ou bâtir.
       *[many] Poser les pièces à partir de celle du dessous. Épingler ou bâtir.
    }
    .title = Poser
lesson-applique-block-sew = { $edges ->
        [turned] Coudre les plis à petits points cachés, la pièce du dessous d’abord.
        [raw] Coudre le tour des bords à cru d’un point serré.
       *[both] Coudre les plis à petits points cachés, la pièce du dessous d’abord ; coudre le tour des bords à cru d’un point serré.
    } Retirer épingles et bâti, compter les épingles, et repasser sur l’envers, sur un support moelleux.
    .title = Coudre

picture-applique-piece-cut = Pièce { $letter }, son pli tracé à l’intérieur du bord
picture-applique-piece-turned = Pièce { $letter }, bords rentrés
picture-applique-piece-raw = Pièce { $letter }, coupée sur sa ligne
picture-applique-block-letters = Le bloc avec son appliqué, chaque pièce avec sa lettre
picture-applique-block = Le bloc avec son appliqué

## Le nom des leçons, et l’intérêt de chaque méthode

technique-applique = Des pièces de tout contour se posent sur un fond déjà assemblé et se cousent tout autour : feuilles, lettres, courbes qu’aucune couture ne joindrait.
    .title = Appliqué
technique-cut-patches = Chaque pièce se coupe seule, avec sa marge de couture, et se coud à sa voisine. Cela convient à tout dessin et ne gaspille pas de tissu ; les triangles ont des bords qui s’étirent, à couper et manier avec douceur.
    .title = Assemblage pièce par pièce
technique-eight-at-a-time = Deux grands carrés et quatre coutures donnent huit demi-carrés en triangle, tous pareils.
    .title = Méthode à huit
technique-foundation = Les pièces se cousent à un papier imprimé, le long de ses lignes : même les pointes étroites sont justes. Elles se coupent trop grandes et se recoupent au fur et à mesure. Le tissu montre l’image en miroir de l’impression.
    .title = Couture sur papier
technique-four-at-a-time = Un grand carré et quatre petits donnent quatre vols d’oies sans triangle à couper et sans perte.
    .title = Méthode à quatre
technique-over-papers = Chaque pièce se plie autour d’un papier à sa taille finie, se bâtit, et se coud à la suivante à la main, pli contre pli. Les angles rentrants sont aussi faciles que les coutures droites, et tout peut se faire loin de la machine.
    .title = Gabarits de papier
technique-stitch-and-flip = Un petit carré se coud en travers du coin d’une pièce plus grande, se recoupe et se rabat. Pas de triangle à couper ; les coins abattus restent.
    .title = Coins rabattus
technique-strip-set = De longues bandes se cousent côte à côte et se coupent en travers en segments : plusieurs coutures en une, des segments tous pareils.
    .title = Ensembles de bandes
technique-two-at-a-time = Deux carrés se cousent des deux côtés d’une ligne en diagonale et se coupent entre les coutures. Les bords extensibles sont cousus avant la coupe : ils ne peuvent pas s’étirer.
    .title = Méthode à deux

topic-a-piece-on-its-ground = Une pièce sur son fond
topic-flying-geese = Vol d’oies
topic-four-patch-and-checkerboard = Quatre carrés et damier
topic-half-square-triangle = Demi-carré en triangle
topic-half-square-triangles = Demi-carrés en triangle
topic-hourglass = Sablier
topic-patches-on-a-paper = Pièces sur un papier
topic-patches-over-papers = Pièces sur gabarits de papier
topic-quarter-circles-and-fans = Quarts de cercle et éventails
topic-quarter-square-unit = Unité en quarts de carré
topic-snowball-corners = Coins de boule de neige
topic-split-square = Carré à trois triangles
topic-square-in-a-square = Carré dans un carré
topic-squares-and-rectangles = Carrés et rectangles
topic-stars-of-many-diamonds = Étoiles en nombreux losanges
topic-strips-one-above-the-other = Bandes l’une au-dessus de l’autre
topic-strips-side-by-side = Bandes côte à côte

head-finished = Fini
head-should-measure = Doit mesurer
head-segment-width = Largeur du segment
head-oversized = { $head }, avec surplus
head-4-corner-squares = 4 carrés de coin
head-all-four-squares = Les quatre carrés
head-base-square = Carré de base
head-both-squares = Les deux carrés
head-corner-square-cut-once-2 = Coin : carré, coupé une fois → 2
head-corner-squares = Carrés de coin
head-goose-1-large-square = Oie : 1 grand carré
head-goose-1-rectangle = Oie : 1 rectangle
head-goose-square-cut-twice-4 = Oie : carré, coupé deux fois → 4
head-large-2-squares = Grand : 2 carrés
head-large-square-cut-once-2 = Grand : carré, coupé une fois → 2
head-middle-square = Carré du milieu
head-quarter-circle-square-for-its-template = Quart de cercle : carré pour son gabarit
head-sky-2-squares = Ciel : 2 carrés
head-sky-4-small-squares = Ciel : 4 petits carrés
head-sky-square-cut-once-2 = Ciel : carré, coupé une fois → 2
head-small-1-square-of-each = Petit : 1 carré de chaque
head-small-square-cut-twice-4 = Petit : carré, coupé deux fois → 4
head-square-cut-once-2-triangles = Carré, coupé une fois → 2 triangles
head-square-cut-twice-4-triangles = Carré, coupé deux fois → 4 triangles
head-strip-width = Largeur de bande
head-surround-square-for-its-template = Contour : carré pour son gabarit

sizes-title = { $topic } : tailles courantes
sizes-aside = { $unit ->
        [in] en pouces, marge de couture de { $seam }
       *[cm] en centimètres, marge de couture de { $seam }
    }{ $wide ->
        [1] { "" }
       *[other]  ; { $wide } : { $high }, largeur sur hauteur
    }
sizes-caption = { $unit ->
        [in] { $topic }, tailles courantes : pouces, marge de couture de { $seam } de chaque côté
       *[cm] { $topic }, tailles courantes : centimètres, marge de couture de { $seam } de chaque côté
    }{ $wide ->
        [1] { "" }
       *[other] , { $wide } : { $high }, largeur sur hauteur
    }
sizes-remark = Fini : mesure dans le bloc cousu. Doit mesurer : avant l’assemblage, avec une marge de couture de { $seam } de chaque côté.
sizes-oversized = Avec surplus : coupé pour que chaque unité soit trop grande d’au moins { $extra } ; la recouper à la taille qu’elle doit mesurer.
section-shown = montré pour { $size } fini
uses-title = { $count ->
        [1] { $topic } dans { $block }
       *[other] { $topic } dans ces blocs
    }
uses-more = { $count ->
        [one] 1 autre unité d’autre taille ou d’autres tissus.
       *[other] { $count } autres unités d’autres tailles ou d’autres tissus.
    }
uses-head = { $spare ->
        [0] { $title }, en faire { $count }, { $size } fini.
       *[other] { $title }, en faire { $count } ({ $spare } en trop), { $size } fini.
    }
uses-of-block = { $block } : { $title }
uses-cut = Couper { $cuts }.
uses-piece-none = { $count } { $form } en { $fabric } de { $size }
uses-piece-once = { $count } { $form } en { $fabric } de { $size }, à couper une fois
uses-piece-twice = { $count } { $form } en { $fabric } de { $size }, à couper deux fois
uses-measure = Chaque unité doit mesurer { $size } avant l’assemblage.
take-care = Précautions

## Triangle dans un carré

lesson-peak-cut = Couper des bandes et y prendre, pour les triangles étroits, { $piece } chaque fois. Couper le triangle large autour de son gabarit. Tenir la règle la main à plat, le bout des doigts loin du bord, et pousser le cutter en s’éloignant de soi.
    .title = Couper
lesson-peak-pairs = Poser deux rectangles endroit contre endroit et couper une fois d’un coin à l’autre. On obtient deux triangles étroits et les deux mêmes en miroir : un de chaque par unité.
    .title = Couper par paires en miroir
lesson-peak-dots = Sur l’envers de chaque triangle, marquer un point à { $seam } des deux bords aux bouts de son bord long. Les pointes n’ont pas le même angle : ce sont les points, non les pointes, qu’on fait coïncider.
    .title = Marquer les points
lesson-peak-first = Poser le triangle étroit sur le bord gauche du large, endroit contre endroit, bords longs alignés. Faire coïncider les points ; les pointes dépassent aux deux bouts. Épingler, et coudre à { $seam } du bord.
    .title = Coudre le premier côté
lesson-peak-press = { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers le triangle étroit.
    } Couper les oreilles.
    .title = Repasser
lesson-peak-second = Poser de même le triangle en miroir sur l’autre bord. Sa couture croise la première juste au-dessus de la pointe. { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers le triangle étroit.
    }
    .title = Coudre le second côté
lesson-peak-measure = L’unité doit maintenant mesurer { $size }, avec { $seam } au-delà de la pointe et les coutures du bas dans les coins. Si elle est plus grande, la recouper ainsi.
    .title = Recouper et mesurer

picture-rectangle-from-strip = Un rectangle coupé dans une bande
picture-pair-cut = Deux rectangles endroit contre endroit, à couper d’un coin à l’autre
picture-peak-dots = Le triangle large, un point à chaque coin, un étroit et son image en miroir à côté
picture-peak-first = Un triangle étroit sur le bord gauche du large, cousu
picture-peak-first-opened = Le triangle large, son côté gauche ouvert
picture-peak-second = Le second triangle étroit posé et cousu

## Log cabins

lesson-log-cut = Couper des bandes de { $width } de large pour les rondins, et le carré du milieu dans l’une d’elles. Couper chaque rondin à la longueur du tableau de coupe : ainsi le bloc reste carré. Tenir la règle la main à plat et pousser le cutter en s’éloignant de soi.
    .title = Couper
lesson-log-first = Poser le premier rondin sur le bord supérieur du carré du milieu, endroit contre endroit, bords alignés. Coudre à { $seam } du bord.
    .title = Coudre le premier rondin
lesson-log-press = { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers le rondin : toutes les coutures d’un log cabin vont vers l’extérieur.
    }
    .title = Repasser
lesson-log-second = Poser le deuxième rondin sur le bord droit, en travers du milieu et du bout du premier, endroit contre endroit. Coudre, et repasser comme avant.
    .title = Coudre le deuxième rondin
lesson-log-round = Continuer dans le même sens : le troisième rondin au bord inférieur, le quatrième au bord gauche. Chacun couvre tout le bord.
    .title = Finir le tour
lesson-log-square = Mesurer après chaque tour. Avec quatre rondins, celui-ci doit mesurer { $size } ; sinon, vérifier la marge de couture avant de continuer.
    .title = Mesurer le tour
lesson-log-next = Commencer le tour suivant là où le précédent a commencé. Poser le rondin le long du bord qui croise deux coutures.
    .title = Le tour suivant
lesson-log-measure = Avec tous les tours, le bloc doit maintenant mesurer { $size }.
    .title = Mesurer

picture-log-laid = Un rondin endroit contre endroit sur ce qui est cousu
picture-log-opened = Le carré du milieu, son premier rondin ouvert
picture-log-round-measured = Le carré du milieu, son premier tour et ses mesures
picture-log-measured = Le bloc terminé et ses mesures

## Étoiles à huit branches

lesson-star-cut = Couper des bandes de { $width } de large. Poser la ligne à 45° de la règle sur un bord de la bande, couper le bout, puis couper des losanges à un écart égal à la largeur de la bande, mesuré d’équerre à la coupe. Tenir la règle la main à plat et pousser le cutter en s’éloignant de soi.
    .title = Couper les losanges
lesson-star-dots = Sur l’envers de chaque losange, triangle et carré, marquer un point à { $seam } des deux bords à chaque coin : les lignes de couture s’y croisent, les coutures s’y arrêtent.
    .title = Marquer les points
lesson-star-pairs = Poser deux losanges endroit contre endroit, tous les bords alignés. Coudre un bord de la pointe au milieu de l’étoile au point de l’autre bout ; faire un point d’arrêt. Faire quatre paires pareilles.
    .title = Coudre les paires
lesson-star-press = { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture de chaque paire vers le même tissu, pour que toutes tournent dans un sens autour de l’étoile.
    }
    .title = Repasser
lesson-star-triangle = Poser un triangle de côté sur un losange, endroit contre endroit, son angle droit au point où s’arrête la couture, un bord court le long du bord libre du losange. Coudre de ce point au bout extérieur.
    .title = Insérer un triangle
lesson-star-quarters = Faire pivoter l’autre bord court du triangle vers le bord libre de l’autre losange. Coudre du même point au bout extérieur. Coucher les deux coutures vers les losanges. Faire quatre quarts.
    .title = Le second bord
lesson-star-halves = Poser deux quarts endroit contre endroit et coudre du milieu au point ; faire un point d’arrêt. { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture dans le même sens de rotation que celles des paires.
    } Faire deux moitiés.
    .title = Coudre les moitiés
lesson-star-join = Poser les moitiés endroit contre endroit. { $press ->
        [open] Aligner les coutures au milieu et épingler. Coudre d’un point à l’autre ; faire un point d’arrêt aux deux bouts. Ouvrir la couture au fer.
       *[side] Emboîter les coutures au milieu et épingler. Coudre d’un point à l’autre ; faire un point d’arrêt aux deux bouts. Repasser du milieu vers l’extérieur et ouvrir les coutures en éventail au milieu.
    }
    .title = Assembler les moitiés
lesson-star-squares = Insérer un carré dans chaque coin comme les triangles. Le bloc doit maintenant mesurer { $size }, avec { $seam } au-delà de chaque pointe.
    .title = Insérer les carrés

picture-diamonds-cut = Une bande coupée à 45 degrés en losanges
picture-star-dots = Un losange, envers visible, un point à chaque coin
picture-star-pair = Deux losanges superposés, cousus du milieu au point
picture-star-pair-opened = Une paire de losanges ouverte ; les flèches montrent où coucher la couture
picture-star-triangle = Un triangle sur un losange, cousu du point vers l’extérieur
picture-star-quarter = Un quart : deux losanges et leur triangle
picture-star-half = Une moitié de l’étoile avec ses triangles
picture-star-joined = L’étoile avec ses triangles, coins encore ouverts
picture-star-measured = L’étoile terminée et ses mesures

## Pièces insérées

lesson-set-in-dots = Sur l’envers des trois pièces, marquer un point à { $seam } des deux bords au coin où elles se rejoignent. Les lignes de couture s’y croisent.
    .title = Marquer les points
lesson-set-in-stop = Poser les deux premières pièces endroit contre endroit, point sur point. Coudre leur bord court oblique du bout extérieur au point ; faire un point d’arrêt. Laisser la marge ouverte au-delà du point.
    .title = S’arrêter au point
lesson-set-in-press = Ouvrir la paire et coucher la couture d’un côté ou l’ouvrir au fer. Les deux bords libres forment un V.
    .title = Repasser
lesson-set-in-first = Poser le carré sur une des deux pièces, endroit contre endroit, son coin au point, bords alignés. Coudre du point au bout extérieur ; faire un point d’arrêt au point.
    .title = Coudre le premier bord
lesson-set-in-second = Faire pivoter le bord suivant du carré vers le bord libre de l’autre pièce ; replier ce qui gêne. Coudre du même point au bout extérieur.
    .title = Coudre le second bord
lesson-set-in-measure = Coucher les deux coutures à l’opposé du carré, ou comme le dit le bloc. Couper les oreilles. Le coin est plat quand toutes les coutures s’arrêtent au même point ; s’il fronce, défaire un point de couture qui le dépasse. L’unité doit maintenant mesurer { $size }.
    .title = Repasser et mesurer

picture-set-in-dots = Trois pièces, un point au coin où elles se rejoignent
picture-set-in-stopped = Deux pièces superposées, leur couture arrêtée au point
picture-set-in-pair = La paire ouverte, un V entre ses bords libres
picture-set-in-first = Le carré sur une pièce, cousu du point vers l’extérieur
picture-set-in-second = Le carré sur l’autre pièce, cousu du point vers l’extérieur
picture-set-in-measured = L’unité terminée et ses mesures

## Coutures partielles

lesson-partial-lay = Poser la première bande sur le bord supérieur du carré, endroit contre endroit, bouts droits alignés ; le bout gauche dépasse. Coudre du bout droit sur environ deux tiers du bord du carré ; faire un point d’arrêt au point. Laisser le reste ouvert.
    .title = Début de la couture
lesson-partial-press = Coucher la partie cousue vers la bande.
    .title = Repasser
lesson-partial-second = Poser la deuxième bande sur le bord droit, en travers du carré et du bout de la première. Coudre tout le bord. { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers la bande.
    }
    .title = Deuxième bande
lesson-partial-third = Poser la troisième bande sur le bord inférieur, en travers du carré et du bout de la deuxième. Coudre, et repasser comme avant.
    .title = Troisième bande
lesson-partial-last = Replier à l’écart le bout libre de la première bande. Poser la quatrième sur le bord gauche, en travers du carré et du bout de la troisième. Coudre, et repasser comme avant.
    .title = Quatrième bande
lesson-partial-finish = Reposer le bout libre de la première bande sur le bord supérieur, endroit contre endroit, bords alignés. Coudre d’un peu avant le point, par-dessus les derniers points, jusqu’au bout gauche. { $press ->
        [open] Ouvrir la couture au fer.
       *[side] Coucher la couture vers la bande.
    }
    .title = Fin de la couture
lesson-partial-measure = L’unité doit maintenant mesurer { $size }.
    .title = Mesurer

picture-partial-laid = Une bande sur le bord supérieur du carré, cousue en partie
picture-partial-opened = La première bande ouverte ; son bout gauche est libre
picture-partial-strip-laid = La bande suivante endroit contre endroit, cousue sur tout le bord
picture-partial-folded = Le bout libre de la première bande replié, la quatrième cousue
picture-partial-finish = La première couture cousue jusqu’au bout
picture-partial-measured = L’unité terminée et ses mesures

## Coins en onglet

lesson-miter-cut = Couper deux bandes pour les côtés et deux pour le haut et le bas, chacune de la longueur du quilt fini avec sa bordure et quelques centimètres de plus. Marquer le milieu de chaque bande et de chaque bord, et un point à { $seam } des deux bords à chaque coin du centre du quilt.
    .title = Couper et marquer
lesson-miter-sew = Poser une bande sur un bord, endroit contre endroit, milieu sur milieu ; elle dépasse autant aux deux bouts. Coudre d’un point à l’autre, à { $seam } du bord ; faire un point d’arrêt aux deux.
    .title = Coudre d’un point à l’autre
lesson-miter-second = Coudre de même la bande du bord suivant. Replier la première à l’écart : les deux coutures s’arrêtent au même point.
    .title = Le bord suivant
lesson-miter-fold = Plier le centre du quilt en diagonale, endroit contre endroit, pour que les deux bandes soient bord à bord. À la règle, prolonger le pli d’une ligne à 45°, du point au bord extérieur.
    .title = Plier et tracer
lesson-miter-stitch = Épingler les bandes le long de la ligne. Coudre dessus du point vers l’extérieur ; faire un point d’arrêt au point. Ouvrir le coin et vérifier qu’il est plat.
    .title = Coudre l’onglet
lesson-miter-trim = Recouper les bandes à { $seam } à l’extérieur de la couture. Couper aux ciseaux, ou tenir la règle la main à plat et pousser le cutter en s’éloignant de soi.
    .title = Recouper
lesson-miter-press = Ouvrir l’onglet au fer et coucher les longues coutures vers la bordure.
    .title = Repasser

picture-miter-strips = Un coin du quilt avec deux bandes de bordure, plus longues que ses bords
picture-miter-first = Une bande cousue à un bord, la couture arrêtée au point
picture-miter-second = Une bande cousue au bord suivant, la couture arrêtée au même point
picture-miter-folded = Le quilt plié en diagonale, les bandes bord à bord, une ligne du point au bord extérieur
picture-miter-sewn = Les bandes cousues ensemble sur la ligne
picture-miter-trimmed = Les bandes à couper à une marge de couture à l’extérieur de la couture
picture-miter-opened = Le coin ouvert, l’onglet ouvert au fer

## Biais continu

lesson-bias-cut = Couper un carré dans le droit-fil, et le couper une fois d’un coin à l’autre. Un carré donne à peu près autant de biais que sa surface divisée par la largeur de la bande. Tenir la règle la main à plat et pousser le cutter en s’éloignant de soi.
    .title = Couper le carré
lesson-bias-sew = Poser un triangle sur l’autre, endroit contre endroit, deux bords droit-fil alignés, les pointes dépassant de { $seam } aux deux bouts. Coudre à { $seam } du bord à petits points. Ouvrir la couture au fer.
    .title = Coudre les triangles
lesson-bias-mark = Poser la pièce, ses bords longs obliques, les bords en biais, en haut et en bas. Sur l’envers, tracer des lignes parallèles à ces bords, à la largeur de la bande. Couper ce qui reste au-delà de la dernière bande entière.
    .title = Tracer les lignes
lesson-bias-tube = Réunir les deux bords droit-fil, endroit contre endroit, en tube. Décaler l’un d’une ligne : la ligne 1 rejoint la ligne 1, et un bout dépasse de chaque côté. Aligner les lignes à { $seam } du bord, épingler et coudre. Ouvrir la couture au fer.
    .title = Coudre un tube
lesson-bias-strip = Commencer au bout qui dépasse. Couper aux ciseaux le long de la ligne, en tournant autour du tube : une seule longue bande.
    .title = Couper la bande
lesson-bias-fold = Plier la bande dans la longueur, envers contre envers, et repasser sans tirer : le biais s’étire.
    .title = Plier et repasser

picture-bias-triangles = Deux triangles superposés, cousus le long d’un bord droit-fil
picture-bias-lines = La pièce avec des lignes parallèles à ses bords longs
picture-bias-matched = La pièce, les bouts de ses lignes numérotés comme ils se rejoignent, décalés d’une ligne
picture-bias-cutting = Le tube à plat, une longue ligne autour et une coupe le long de la ligne
picture-bias-folded = La bande, à moitié pliée dans la longueur

technique-set-in-seams = Là où trois pièces se rejoignent en un coin, aucune couture droite ne joint la dernière. Les coutures s’arrêtent à un point, et la dernière pièce s’insère bord par bord.
    .title = Pièces insérées
technique-partial-seams = Là où des bandes tournent autour d’un carré comme les ailes d’un moulin, aucune n’est la dernière. La première couture se fait en partie, et se finit quand toutes les autres sont en place.
    .title = Coutures partielles
technique-mitered-corners = Les bandes de bordure se rejoignent à 45°, comme un cadre. Il faut des bandes plus longues et des coutures qui s’arrêtent au coin.
    .title = Coins en onglet
technique-continuous-bias = Bords courbes et finitions solides demandent des bandes dans le biais. Un carré, coupé une fois et cousu deux fois, donne une longue bande.
    .title = Biais continu
topic-triangle-in-a-square = Triangle dans un carré
topic-log-cabins = Log cabins
topic-eight-point-stars = Étoiles à huit branches
topic-a-square-set-into-a-corner = Un carré inséré dans un angle
topic-four-strips-around-a-square = Quatre bandes autour d’un carré
topic-the-corner-of-a-border = Le coin d’une bordure
topic-a-bias-strip-from-a-square = Une bande de biais d’un carré
picture-star-large-diamond = Un grand losange fait de petits
