export const aboutWords = {
  title: 'About Sumstitch',
  parts: [
    {
      title: 'What it is',
      lines: [
        'Sumstitch is a practice aid: one short sheet of arithmetic facts a day, which the child sits alone and you read.',
        'It is not a test for a learning difficulty and can’t find one. If you are worried, ask the child’s teacher, a doctor or a licensed psychologist.',
      ],
    },
    {
      title: 'The clock',
      lines: [
        'Whether timed practice makes children anxious is disputed; some children dislike it. The clock is yours to leave off.',
        'Every new set begins without it. The limits of the bands are common practice with pencil and paper, not a published norm, and there are no published norms for answers keyed on a screen.',
      ],
    },
    {
      title: 'Records',
      lines: [
        'What home teaching has to record differs from place to place. Your local rules decide; Sumstitch claims nothing.',
        'Nothing is ever changed in place: each decision of yours is a record of its own, and can be undone.',
      ],
    },
    {
      title: 'Where the data is',
      lines: [
        'Everything stays in this browser on this device. It never leaves the device unless you carry it. No other site is asked for anything.',
        'The PIN keeps children out; it does not encrypt. Whoever can use the device without the child’s screen in the way can read what is stored.',
      ],
    },
    {
      title: 'Keeping a child in the app',
      lines: [
        'Within the app, leaving needs the PIN. The device’s own home button or gesture is out of a web page’s reach, but most devices can hold one app on the screen.',
        'Tablets and phones: most can be set so that only the page now open can be used until a code is typed. Look in the device’s settings for “pin” or “lock to one app”, often under security or accessibility.',
        'Computers: make a user account for the child, and open Sumstitch there in the browser’s full screen.',
      ],
    },
  ],
  storageTitle: 'This browser',
} as const;
