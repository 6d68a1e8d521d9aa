import { ErrorValueObject } from '@univerjs/engine-formula';
import { messageKey } from './value-objects';

const ownData = ErrorValueObject.prototype.getCustomData;

/**
 * The engine writes the data of a result only where it has some, so the message of an error stayed in its cell when
 * another error without a message took its place. An error without a message now has a blank one.
 */
export function repairErrors(): void {
  ErrorValueObject.prototype.getCustomData = function () {
    return ownData.call(this) ?? { [messageKey]: '' };
  };
}
