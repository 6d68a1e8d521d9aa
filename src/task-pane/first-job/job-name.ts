/** The name of the cell that the guide finds a job by. */
export const firstJobName = 'SiltFirstJob';
