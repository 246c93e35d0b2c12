// Before the first paint of the helper, so that nothing moves or flashes later: paper or night, as
// ?theme= says or else as the device; and whether a base comes with the link, whose fields then
// need not be asked. Written into the page.
(() => {
  const given = new URLSearchParams(location.search);
  const device = matchMedia("(prefers-color-scheme: dark)");
  const choose = () => {
    const dark =
      given.get("theme") === "dark" || (given.get("theme") !== "light" && device.matches);
    document.body.dataset.mdColorScheme = dark ? "slate" : "default";
  };
  choose();
  device.addEventListener("change", choose);
  document.body.classList.toggle("linked", given.has("g"));
})();
