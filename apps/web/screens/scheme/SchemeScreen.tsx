export const SchemeScreen = () => null;
