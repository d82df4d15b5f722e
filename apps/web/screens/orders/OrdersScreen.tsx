export const OrdersScreen = () => null;
