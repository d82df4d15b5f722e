export const DogScreen = () => null;
