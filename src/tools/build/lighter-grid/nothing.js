/** Stands for what is added to the interface by a part that has been left out. */
export {};
