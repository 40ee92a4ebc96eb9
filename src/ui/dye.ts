/** The thread colours, all from plants. Madder is for set colours only, never for "wrong". */
export const dyes = ['indigo', 'moss', 'heather', 'walnut', 'woad', 'weld', 'madder'] as const;

export type Dye = (typeof dyes)[number];
