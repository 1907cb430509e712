#ifdef __cplusplus
}
#endif

#endif
