/** Bare linen while the log is read. */
export function Starting() {
  return <main class="screen linen" aria-busy="true" />;
}
