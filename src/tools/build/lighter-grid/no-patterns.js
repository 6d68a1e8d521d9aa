/** Stands for the hyphenation patterns of a language: there are none. */
export {};
