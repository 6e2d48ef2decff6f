// Day and night at the Bench, without asking the server; the cookie tells the other pages.

const A_YEAR_S = 31536000;

export function changeTheme() {
  const root = document.documentElement;
  const dark = window.matchMedia("(prefers-color-scheme: dark)").matches;
  const now = root.dataset["theme"] ?? (dark ? "night" : "day");
  const theme = now === "night" ? "day" : "night";
  root.dataset["theme"] = theme;
  document.cookie = `theme=${theme}; path=/; max-age=${A_YEAR_S}; samesite=strict`;
}
