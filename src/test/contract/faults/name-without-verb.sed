0,/operationId: getLimits/s//operationId: limits/
