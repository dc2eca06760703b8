// The page calls the engine; by itself it does nothing.
return 0;
