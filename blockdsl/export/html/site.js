// What the pages do beyond reading, where scripts run: the chosen size holds on the next page too, an address inside
// what is said for another size chooses that size, and Escape puts an enlarged picture back.
"use strict";
(() => {
  const KEY = "finished-size";
  const choices = [...document.querySelectorAll(".switch input")];

  function remembered() {
    try {
      return sessionStorage.getItem(KEY);
    } catch {
      return null; // a browser may keep nothing for pages from a disk
    }
  }

  function choose(choice) {
    if (choice) choice.checked = true;
  }

  choose(choices.find((choice) => choice.value === remembered()));
  for (const choice of choices) {
    choice.addEventListener("change", () => {
      try {
        sessionStorage.setItem(KEY, choice.value);
      } catch {
        // the choice then holds for this page alone
      }
    });
  }

  function show() {
    const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    const part = target?.closest("[data-at]");
    if (!part) return;
    choose(document.getElementById(`at-${part.dataset.at.split(" ")[0]}`));
    target.scrollIntoView();
  }
  show();
  addEventListener("hashchange", show);

  addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    for (const larger of document.querySelectorAll(".larger:checked")) larger.checked = false;
  });
})();
