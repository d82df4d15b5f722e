export const DayBoardScreen = () => null;
