/** Stands for the store of the grid's own habits, such as fonts used of late: it keeps nothing. */
const nothing = () => Promise.resolve(null);
module.exports = {
  getItem: nothing,
  setItem: nothing,
  removeItem: nothing,
  clear: nothing,
  key: nothing,
  keys: () => Promise.resolve([]),
  iterate: nothing,
};
