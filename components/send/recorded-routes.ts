/** Ways an answer comes besides the link. */
export const RECORDED_ROUTES = ['text', 'phone', 'counter'] as const;
