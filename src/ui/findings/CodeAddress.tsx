/** An address as a link and as text: it is followed only when it is touched, and can be typed off a printed page. */
interface CodeAddressProps {
  readonly address: string;
  /** Of what, where the same address stands in several places. */
  readonly about?: string;
}

export function CodeAddress({ address, about }: CodeAddressProps) {
  const shown = address.replace(/^https:\/\//, '').replace(/\/$/, '');
  return (
    <a
      className="code-address"
      href={address}
      target="_blank"
      rel="noreferrer noopener"
      aria-label={about === undefined ? undefined : `${shown}: ${about}`}
    >
      {shown}
    </a>
  );
}
