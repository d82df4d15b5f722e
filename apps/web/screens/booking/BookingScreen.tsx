export const BookingScreen = () => null;
