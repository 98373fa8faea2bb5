'use client';

import { Button } from '../ui/button';

/** Opens the browser's own print window. */
export function PrintButton({ children }: { children: string }) {
  return (
    <Button kind="primary" onClick={() => window.print()}>
      {children}
    </Button>
  );
}
