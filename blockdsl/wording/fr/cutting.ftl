squaring-up = Les ensembles de bandes sont coupés { $first } { $unit ->
        [in] po
       *[other] { $unit }
    } plus longs que leurs segments pour mettre les bouts d’équerre, et { $again } { $unit ->
        [in] po
       *[other] { $unit }
    } plus longs chaque fois que l’ensemble est remis d’équerre, tous les trois segments.

print-up-on-template = haut du motif vers { $side } du gabarit

side-top = le haut
side-upper-right = le coin supérieur droit
side-right = le côté droit
side-lower-right = le coin inférieur droit
side-bottom = le bas
side-lower-left = le coin inférieur gauche
side-left = le côté gauche
side-upper-left = le coin supérieur gauche
