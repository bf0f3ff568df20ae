0,/        distanceHigh:/s//        distance_high:/
