import { z } from "zod";

// The page may not make code from text, and zod would try to while the schemas are built: this module comes before them.
z.config({ jitless: true });
