export const DogsScreen = () => null;
