export const OrderScreen = () => null;
