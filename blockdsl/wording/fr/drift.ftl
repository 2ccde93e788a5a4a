rounding-adds-up = Arrondies à { $measure } { $unit ->
        [in] po
       *[other] { $unit }
    }, les mesures de coupe s’additionnent : { $row } mesurent { $real } là où { $drawn } conviennent, et les coutures se décalent de plus de { $off }.
rounding-adds-up-seams = Arrondies à { $measure } { $unit ->
        [in] po
       *[other] { $unit }
    }, les mesures de coupe s’additionnent, et les coutures se décalent de plus de { $off }.
drift-one = les pièces { $letter }
drift-alike = { $count } pièces { $letter } en rangée
drift-mixed = { $list } en rangée
drift-some = { $count } { $letter }
use-templates = Couper { $letters } avec { $count ->
        [one] son gabarit
       *[other] leurs gabarits
    } plutôt qu’à la règle.
use-finer = Ou bien faire calculer les mesures à { $measure } { $unit ->
        [in] po
       *[other] { $unit }
    }.
use-size = Les coutures se rejoignent avec une taille finie de { $sizes }.
use-method = Ou bien coudre { $what } sur papier.
drift-either = { $first } ou { $second }
