/** Says why a value cannot be read as the quantity asked for; the message is whole, without the argument's name. */
export class Unreadable extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'Unreadable';
  }
}
