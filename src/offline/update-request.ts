/** What a page and the service worker say to each other about a new version. */
export const updateRequest = { type: 'update' } as const;

export type UpdateReply = 'updating' | 'other pages are open';

export function isUpdateRequest(data: unknown): data is typeof updateRequest {
  return typeof data === 'object' && data !== null && 'type' in data && data.type === updateRequest.type;
}
