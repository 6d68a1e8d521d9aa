/** Says why a value cannot be read as the expected quantity; a full message without the argument's name. */
export class Unreadable extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'Unreadable';
  }
}
