# Sentences of the steps that join patches and units, where British English differs.

join-turn = { $quarters ->
    [2] { $part } is { $like } turned half round.
   *[other] { $part } is { $like } turned a quarter round.
}
join-baste = Fold the edges of each piece over its paper and tack them.
join-papers-out = Press from the back. Take out the tacking and the papers, and press the outer edges open.
join-baste-same = Tack the pieces to their papers.
-before-stop = 1 cm
