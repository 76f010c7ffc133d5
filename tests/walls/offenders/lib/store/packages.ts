// Wrong on purpose: store may not use the package next/server.
import { NextResponse } from 'next/server';

export const taken = NextResponse;
