'use client';

import { useState } from 'react';
import { TextField } from './text-field';

type PixelFieldProps = { name: string; label: string; value: number; onValue: (value: number) => void };

/** A number of pixels that follows what it belongs to, and moves it when it is typed. What is being typed is left as it is. */
export function PixelField({ name, label, value, onValue }: PixelFieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <TextField
      name={name}
      label={label}
      width="short"
      inputMode="numeric"
      autoComplete="off"
      value={typed ?? String(value)}
      onChange={({ target }) => {
        setTyped(target.value);
        if (/^\s*\d{1,5}\s*$/.test(target.value)) onValue(Number(target.value));
      }}
      onBlur={() => setTyped(null)}
    />
  );
}
