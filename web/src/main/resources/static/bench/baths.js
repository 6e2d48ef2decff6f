// Which hatch a bath has.

/** @type {Record<string, string>} */
const HATCHES = {
  "pre-soak": "presoak",
  developer: "developer",
  "developer bath A": "developer",
  "developer bath B": "developer",
  "first developer": "developer",
  "second developer": "developer",
  monobath: "bleachfix",
  "stop bath": "stop",
  fixer: "fixer",
  rinse: "rinse",
  "wash aid": "washaid",
  wash: "wash",
  "final rinse": "final",
  bleach: "bleach",
  "bleach-fix": "bleachfix",
  "clearing bath": "reversal",
  conditioner: "conditioner",
  stabiliser: "stabiliser",
  hardener: "hardener",
};

/** @param {string} kind */
export function hatchOf(kind) {
  return HATCHES[kind] ?? "wash";
}

/** What the tank is called beside its bottle: "stop bath, bottle S". @param {{word: string, bottle: string | null}} step */
export function named(step) {
  const word = step.word.charAt(0).toLowerCase() + step.word.slice(1);
  return step.bottle === null ? word : `${word}, bottle ${step.bottle}`;
}
