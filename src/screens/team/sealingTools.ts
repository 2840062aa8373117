import type { SealingTools } from '../../exchange/sealedFile.ts';

const TAG_BITS = 128;

/** Sealing by the browser's own W3C Web Cryptography. */
export const sealingTools: SealingTools = {
  digest: async (bytes) => new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)),
  stretch: async (passphrase, salt, iterations, bytes) => {
    const key = await crypto.subtle.importKey('raw', passphrase, 'PBKDF2', false, ['deriveBits']);
    const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations };
    return new Uint8Array(await crypto.subtle.deriveBits(how, key, bytes * 8));
  },
  encrypt: async (raw, iv, also, content) => {
    const key = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt']);
    const how = { name: 'AES-GCM', iv, additionalData: also, tagLength: TAG_BITS };
    return new Uint8Array(await crypto.subtle.encrypt(how, key, content));
  },
  decrypt: async (raw, iv, also, sealed) => {
    const key = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['decrypt']);
    const how = { name: 'AES-GCM', iv, additionalData: also, tagLength: TAG_BITS };
    try {
      return new Uint8Array(await crypto.subtle.decrypt(how, key, sealed));
    } catch (error) {
      if ((error as { name?: unknown }).name === 'OperationError') return null;
      throw error;
    }
  },
  random: (bytes) => crypto.getRandomValues(new Uint8Array(bytes)),
  encode: (text) => new TextEncoder().encode(text),
  decode: (bytes) => {
    try {
      return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    } catch (error) {
      if (error instanceof TypeError) return null;
      throw error;
    }
  },
};
