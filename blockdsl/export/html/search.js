// The search: the page lists all pages of the site, and this hides what does not have the words that are typed.
"use strict";
(() => {
  const BESIDE = 60; // letters shown before and behind a word that was found
  const field = document.getElementById("find");
  const list = document.getElementById("found");
  const status = document.getElementById("status");
  const items = [...list.children];

  // Letter for letter, so that places in the folded text are places in the text.
  const folded = (text) =>
    [...text].map((letter) => (letter === "’" ? "'" : letter.normalize("NFD")[0].toLowerCase())).join("");
  const pages = siteWords.map(({ title, over, text }, place) => ({
    item: items[place],
    letters: [...text],
    title: folded(title),
    over: folded(over),
    text: folded(text),
  }));

  function begins(text, word) {
    for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
      if (at === 0 || !/[\p{L}\p{N}]/u.test(text[at - 1])) return at;
    }
    return -1;
  }

  function rank(page, words) {
    let sum = 0;
    for (const word of words) {
      if (begins(page.title, word) >= 0) sum += 100;
      else if (begins(page.over, word) >= 0) sum += 10;
      else if (begins(page.text, word) >= 0) sum += 1;
      else return 0;
    }
    return sum + (page.title === words.join(" ") ? 1000 : 0);
  }

  function passage(page, words) {
    const word = words.find((each) => begins(page.title, each) < 0 && begins(page.text, each) >= 0);
    if (!word) return "";
    const at = begins(page.text, word);
    const before = page.text.lastIndexOf(" ", at - BESIDE);
    const after = page.text.indexOf(" ", at + word.length + BESIDE);
    const from = at > BESIDE ? before + 1 : 0;
    const to = after < 0 ? page.letters.length : after;
    const said = page.letters.slice(from, to).join("").trim();
    return `${from ? "… " : ""}${said}${to < page.letters.length ? " …" : ""}`;
  }

  function find() {
    const words = folded(field.value).split(/\s+/u).filter(Boolean);
    const ranked = pages.map((page) => ({ page, rank: words.length ? rank(page, words) : 1 }));
    ranked.sort((one, other) => other.rank - one.rank);
    for (const { page, rank: worth } of ranked) {
      page.item.hidden = worth === 0;
      page.item.querySelector(".passage").textContent = words.length ? passage(page, words) : "";
      list.append(page.item);
    }
    const count = ranked.filter((each) => each.rank > 0).length;
    status.textContent = words.length ? `${status.dataset.found} ${count}` : "";
  }

  document.getElementById("search").hidden = false;
  field.addEventListener("input", find);
  field.focus();
  find();
})();
