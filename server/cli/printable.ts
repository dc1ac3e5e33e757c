const steering = /(?!\n)[\p{Cc}\p{Cf}\u2028\u2029]/gu;

/** Text with every character that could steer a terminal replaced; a tab becomes a blank, so that columns stay. */
export const printable = (text: string): string => text.replaceAll('\t', ' ').replace(steering, '\ufffd');
