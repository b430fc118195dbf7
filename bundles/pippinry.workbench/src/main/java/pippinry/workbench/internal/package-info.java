package pippinry.workbench.internal;
