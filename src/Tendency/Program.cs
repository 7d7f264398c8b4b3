return 2;
