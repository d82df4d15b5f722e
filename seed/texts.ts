import type { Language } from '#libs/words/languages';

/** Texts that the practices’ vets approve; invented for the demo, with the usual cautions and without any dose. */
export interface SeedText {
  kind: 'advice' | 'goingHome' | 'consentSedation' | 'consentSendAll' | 'consentStatistics';
  title: string;
  forDogs: string;
  body: string;
  language?: Language;
}

const night = `Give no food in the night before the visit. Water may stay until the morning. Bring your dog's papers, a blanket and the list of everything it takes. Please give no tablets of your own. Call us first if your dog is ill, in season, or may be pregnant: then we choose another day. Come half an hour early, and let your dog pass water before you come in.`;

export const texts: SeedText[] = [
  { kind: 'advice', title: 'Grown dogs', forDogs: 'healthy dogs over one year', body: night },
  {
    kind: 'advice',
    title: 'Young dogs',
    forDogs: 'dogs under one year and very small dogs',
    body: `Young and small dogs must not go without food for as long as big ones. Call us on the day before: a vet tells you when the last meal is. Water may stay until you leave home. Keep your dog warm on the way. Bring its papers and a blanket that smells of home. Please give no tablets of your own. Call us first if your dog is ill or off its food.`,
  },
  {
    kind: 'goingHome',
    title: 'Going home after sedation',
    forDogs: 'every dog',
    body: `# Normal tonight
Sleepy, wobbly and quiet. A bare patch on the leg, perhaps a small bruise. Less hungry than usual.

# What to do
Keep your dog in a warm, quiet room, with you. No stairs and no jumping. Never leave it alone in the car. Give water when it stands well, and a small meal later in the evening. Give no tablets of your own. Keep children and other pets apart. Tomorrow, short walks on the lead.

# Call at once
If your dog cannot be woken, breathes hard or noisily, or has pale, blue or grey gums. If it falls down or has a fit. If it vomits again and again, has a swollen belly, or bleeds. Or if you are worried: you need no other reason.`,
  },
  {
    kind: 'goingHome',
    title: 'Nach der Sedierung zu Hause',
    forDogs: 'every dog',
    language: 'de',
    body: `# Heute Nacht normal
Müde, wackelig und still. Eine kahle Stelle am Bein, vielleicht ein kleiner Bluterguss. Weniger Hunger als sonst.

# Was zu tun ist
Halten Sie Ihren Hund in einem warmen, ruhigen Raum, bei Ihnen. Keine Treppen und kein Springen. Lassen Sie ihn nie allein im Auto. Geben Sie Wasser, wenn er gut steht, und später am Abend eine kleine Mahlzeit. Geben Sie keine eigenen Tabletten. Halten Sie Kinder und andere Tiere fern. Morgen kurze Wege an der Leine.

# Sofort anrufen
Wenn Ihr Hund sich nicht wecken lässt, schwer oder laut atmet, oder blasses, blaues oder graues Zahnfleisch hat. Wenn er umfällt oder einen Krampf hat. Wenn er immer wieder erbricht, einen dicken Bauch hat oder blutet. Oder wenn Sie sich Sorgen machen: Sie brauchen keinen anderen Grund.`,
  },
  {
    kind: 'consentSedation',
    title: 'Sedation for the pictures',
    forDogs: 'every dog',
    body: `Your dog must lie still and loose for the pictures, so a vet gives it medicine to sleep lightly. Sleep medicine always carries a small risk, in rare cases a grave one. Before it, a vet examines your dog and decides on that day whether it may sleep. While it sleeps, one person does nothing but watch it. We stop at any time if that is better for your dog, even if a picture is missing. Please tell us what to do in an emergency, up to which amount we may spend without asking, and which number you answer today. You can say no, and you can take a yes back until your dog sleeps.`,
  },
  {
    kind: 'consentSendAll',
    title: 'Every picture is sent',
    forDogs: 'every dog',
    body: `Every picture that is taken goes to the reading centre, also one that had to be taken again and one that looks bad. If only good ones were sent, nobody could know how the breed is. The reader sees your dog's number, breed, sex and age, and neither your name nor ours. You can say no: then no pictures are taken for this reading. Once the pictures have been sent they cannot be called back.`,
  },
  {
    kind: 'consentStatistics',
    title: 'Use in the breed’s figures',
    forDogs: 'every dog',
    body: `May the reading count in the figures of your dog's breed? They are made without your name. Your answer changes nothing for your dog: it is examined and read in the same way. You can change your answer later. What has been printed by then stays printed.`,
  },
];
