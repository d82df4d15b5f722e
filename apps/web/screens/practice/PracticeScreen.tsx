export const PracticeScreen = () => null;
