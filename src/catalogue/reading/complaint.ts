/** A refusal whose message is whole: argument, what was given, what is allowed, in the user's units. */
export class Complaint extends Error {
  readonly code: '#VALUE!' | '#N/A';
  constructor(message: string, code: '#VALUE!' | '#N/A' = '#VALUE!') {
    super(message);
    this.name = 'Complaint';
    this.code = code;
  }
}
