export const yesNo = (value: boolean): string => (value ? 'yes' : 'no');
