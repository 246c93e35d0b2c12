// Paper or night, before the first paint: as ?theme= says, else as the device. Written into the pages that stand without the theme.
(() => {
  const asked = new URLSearchParams(location.search).get("theme");
  const device = matchMedia("(prefers-color-scheme: dark)");
  const choose = () => {
    const dark = asked === "dark" || (asked !== "light" && device.matches);
    document.body.dataset.mdColorScheme = dark ? "slate" : "default";
  };
  choose();
  device.addEventListener("change", choose);
})();
