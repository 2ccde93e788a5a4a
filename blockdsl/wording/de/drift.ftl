# Was vor dem ersten Schnitt gesagt wird, wenn sich das Runden auf das Lineal summiert. $row ist, was zu lang wird.

rounding-adds-up =
    Auf { $measure } { $unit ->
        [in] Zoll
       *[cm] cm
    } aufgerundet, summieren sich die Zuschnittmaße: { $row } werden { $real } lang, wo { $drawn } passen,
    und Nähte verschieben sich um mehr als { $off }.
rounding-adds-up-seams =
    Auf { $measure } { $unit ->
        [in] Zoll
       *[cm] cm
    } aufgerundet, summieren sich die Zuschnittmaße, und Nähte verschieben sich um mehr als { $off }.
drift-one = Teile { $letter }
drift-alike = { $count } Teile { $letter } in einer Reihe
drift-mixed = { $list } in einer Reihe
drift-some = { $count } { $letter }
use-templates = { $letters } mit { $count ->
    [one] der Schablone
    *[other] den Schablonen
  } statt mit dem Lineal zuschneiden.
use-finer = Oder die Maße auf { $measure } { $unit ->
        [in] Zoll
       *[cm] cm
    } genau berechnen lassen.
use-size = Bei einer fertigen Größe von { $sizes } treffen die Nähte aufeinander.
use-method = Oder { $what } auf Papier nähen.
drift-either = { $first } oder { $second }
