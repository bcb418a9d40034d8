const filter = document.getElementById("filter");
filter.addEventListener("input", () => {
  const wanted = filter.value.trim().toLowerCase();
  for (const one of document.querySelectorAll("article")) one.hidden = !one.dataset.name.includes(wanted);
  for (const room of document.querySelectorAll("section")) room.hidden = !room.querySelector("article:not([hidden])");
});
