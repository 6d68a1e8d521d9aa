/** Stands for what the grid's own functions do, in words, which `function-words.ts` loads once the page can be used. */
module.exports = {};
